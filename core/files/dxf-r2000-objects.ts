import type { Bounds } from '../geometry/measure.ts';
import { HANDLE } from './dxf-r2000-handles.ts';
import { point, real, row, section, text, whole, type Tag } from './dxf-tags.ts';

/** The BLOCKS section: the two spaces of every drawing, themselves empty; entities name their owner. */
export const blocks: readonly Tag[] = section('BLOCKS', [
  ...block('*Model_Space', HANDLE.modelRecord, HANDLE.modelBlock, HANDLE.modelBlockEnd),
  ...block('*Paper_Space', HANDLE.paperRecord, HANDLE.paperBlock, HANDLE.paperBlockEnd),
]);

function block(name: string, record: string, handle: string, endHandle: string): readonly Tag[] {
  const entity = (type: string, own: string, subclass: string): readonly Tag[] => [
    text(0, type),
    text(5, own),
    text(330, record),
    text(100, 'AcDbEntity'),
    text(8, '0'),
    text(100, subclass),
  ];
  return [
    ...entity('BLOCK', handle, 'AcDbBlockBegin'),
    ...row(text(2, name), whole(70, 0), ...point(10, { x: 0, y: 0 }), text(3, name), text(1, '')),
    ...entity('ENDBLK', endHandle, 'AcDbBlockEnd'),
  ];
}

/** The OBJECTS section: the root dictionary first, what readers expect in it, and the two layouts. */
export const objects = (extents: Bounds): readonly Tag[] =>
  section('OBJECTS', [
    ...dictionary(HANDLE.rootDictionary, '0', {
      ACAD_GROUP: HANDLE.groups,
      ACAD_LAYOUT: HANDLE.layouts,
      ACAD_MLINESTYLE: HANDLE.lineStyles,
      ACAD_PLOTSETTINGS: HANDLE.plotSettings,
      ACAD_PLOTSTYLENAME: HANDLE.plotStyles,
    }),
    ...dictionary(HANDLE.groups, HANDLE.rootDictionary, {}),
    ...dictionary(HANDLE.layouts, HANDLE.rootDictionary, {
      Layout1: HANDLE.paperLayout,
      Model: HANDLE.modelLayout,
    }),
    ...dictionary(HANDLE.lineStyles, HANDLE.rootDictionary, { Standard: HANDLE.lineStyle }),
    ...dictionary(HANDLE.plotSettings, HANDLE.rootDictionary, {}),
    ...plotStyles,
    ...multiLineStyle,
    ...layout('Model', 0, HANDLE.modelLayout, HANDLE.modelRecord, extents),
    ...layout('Layout1', 1, HANDLE.paperLayout, HANDLE.paperRecord, null),
  ]);

const dictionary = (
  handle: string,
  owner: string,
  entries: Readonly<Record<string, string>>,
  type = 'DICTIONARY',
): readonly Tag[] => [
  text(0, type),
  text(5, handle),
  text(330, owner),
  text(100, 'AcDbDictionary'),
  whole(281, 1),
  ...Object.entries(entries).flatMap(([name, entry]) => [text(3, name), text(350, entry)]),
];

const plotStyles: readonly Tag[] = [
  ...dictionary(
    HANDLE.plotStyles,
    HANDLE.rootDictionary,
    { Normal: HANDLE.plotStyleNormal },
    'ACDBDICTIONARYWDFLT',
  ),
  ...row(text(100, 'AcDbDictionaryWithDefault'), text(340, HANDLE.plotStyleNormal)),
  ...row(text(0, 'ACDBPLACEHOLDER'), text(5, HANDLE.plotStyleNormal), text(330, HANDLE.plotStyles)),
];

/** The style `Standard` of multiple lines that every drawing has: two lines, half a unit to each side. */
const multiLineStyle: readonly Tag[] = [
  ...row(text(0, 'MLINESTYLE'), text(5, HANDLE.lineStyle), text(330, HANDLE.lineStyles)),
  ...row(text(100, 'AcDbMlineStyle'), text(2, 'STANDARD'), whole(70, 0), text(3, ''), whole(62, 256)),
  ...row(real(51, 90), real(52, 90), whole(71, 2)),
  ...row(real(49, 0.5), whole(62, 256), text(6, 'BYLAYER')),
  ...row(real(49, -0.5), whole(62, 256), text(6, 'BYLAYER')),
];

/** Plot settings are neutral: no printer, no paper, scale 1 to 1. 70 of the first class: 1024 is the model's tab. */
const layout = (
  name: string,
  order: number,
  handle: string,
  record: string,
  extents: Bounds | null,
): readonly Tag[] => [
  ...row(text(0, 'LAYOUT'), text(5, handle), text(330, HANDLE.layouts), text(100, 'AcDbPlotSettings')),
  ...row(text(1, ''), text(2, 'none_device'), text(4, ''), text(6, '')),
  ...[40, 41, 42, 43, 44, 45, 46, 47, 48, 49, 140, 141].map((code) => real(code, 0)),
  ...row(
    real(142, 1),
    real(143, 1),
    whole(70, order === 0 ? 1024 : 0),
    whole(72, 1),
    whole(73, 0),
    whole(74, 5),
  ),
  ...row(text(7, ''), whole(75, 16), real(147, 1), real(148, 0), real(149, 0)),
  ...row(text(100, 'AcDbLayout'), text(1, name), whole(70, 1), whole(71, order)),
  ...row(real(10, 0), real(20, 0), real(11, 420), real(21, 297), ...point(12, { x: 0, y: 0 })),
  ...point(14, extents?.min ?? { x: 0, y: 0 }),
  ...point(15, extents?.max ?? { x: 0, y: 0 }),
  ...row(
    real(146, 0),
    ...point(13, { x: 0, y: 0 }),
    ...point(16, { x: 1, y: 0 }),
    ...point(17, { x: 0, y: 1 }),
  ),
  ...row(whole(76, 0), text(330, record)),
];
