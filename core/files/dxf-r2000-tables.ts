import type { Bounds } from '../geometry/measure.ts';
import { midpoint } from '../geometry/vector.ts';
import type { LayerStyle } from '../machine/profile.ts';
import { HANDLE, layerHandle } from './dxf-r2000-handles.ts';
import { real, row, section, text, whole, type Tag } from './dxf-tags.ts';

/** The TABLES section of an R2000 file, after the DXF reference: all nine tables, those unused empty. */
export const tables = (layers: readonly LayerStyle[], extents: Bounds): readonly Tag[] =>
  section('TABLES', [
    ...table('VPORT', HANDLE.vportTable, [viewport(extents)]),
    ...table('LTYPE', HANDLE.ltypeTable, [
      lineType('ByBlock', HANDLE.byBlock),
      lineType('ByLayer', HANDLE.byLayer),
      lineType('Continuous', HANDLE.continuous),
    ]),
    ...table('LAYER', HANDLE.layerTable, [
      layer('0', 7, HANDLE.layerZero),
      ...layers.map(({ name, colorIndex }, index) => layer(name, colorIndex, layerHandle(index))),
    ]),
    ...table('STYLE', HANDLE.styleTable, [textStyle]),
    ...table('VIEW', HANDLE.viewTable, []),
    ...table('UCS', HANDLE.ucsTable, []),
    ...table('APPID', HANDLE.appidTable, [
      record('APPID', HANDLE.appid, HANDLE.appidTable, 'AcDbRegAppTableRecord', 'ACAD'),
    ]),
    ...table('DIMSTYLE', HANDLE.dimstyleTable, [dimStyle], [text(100, 'AcDbDimStyleTable')]),
    ...table('BLOCK_RECORD', HANDLE.blockRecordTable, [
      blockRecord('*Model_Space', HANDLE.modelRecord, HANDLE.modelLayout),
      blockRecord('*Paper_Space', HANDLE.paperRecord, HANDLE.paperLayout),
    ]),
  ]);

const table = (
  name: string,
  handle: string,
  entries: readonly (readonly Tag[])[],
  more: readonly Tag[] = [],
): readonly Tag[] => [
  text(0, 'TABLE'),
  text(2, name),
  text(5, handle),
  text(330, '0'),
  text(100, 'AcDbSymbolTable'),
  whole(70, entries.length),
  ...more,
  ...entries.flat(),
  text(0, 'ENDTAB'),
];

/** The head of a record; `handleCode` is 105 for dimension styles alone. */
const record = (
  type: string,
  handle: string,
  owner: string,
  subclass: string,
  name: string,
  handleCode = 5,
): readonly Tag[] => [
  text(0, type),
  text(handleCode, handle),
  text(330, owner),
  text(100, 'AcDbSymbolTableRecord'),
  text(100, subclass),
  text(2, name),
  whole(70, 0),
];

/** The view that opens: the whole drawing with a tenth of room about it. */
function viewport({ min, max }: Bounds): readonly Tag[] {
  const middle = midpoint(min, max);
  const aspect = 1.5;
  const height = Math.max(max.y - min.y, (max.x - min.x) / aspect) * 1.1;
  const pairs = [
    [10, 0, 0],
    [11, 1, 1],
    [12, middle.x, middle.y],
    [13, 0, 0],
    [14, 1, 1],
    [15, 1, 1],
  ] as const;
  return [
    ...record('VPORT', HANDLE.vport, HANDLE.vportTable, 'AcDbViewportTableRecord', '*Active'),
    ...pairs.flatMap(([code, x, y]) => [real(code, x), real(code + 10, y)]),
    ...row(real(16, 0), real(26, 0), real(36, 1), real(17, 0), real(27, 0), real(37, 0)),
    ...row(
      real(40, height),
      real(41, aspect),
      real(42, 50),
      real(43, 0),
      real(44, 0),
      real(50, 0),
      real(51, 0),
    ),
    ...row(whole(71, 0), whole(72, 1000), whole(73, 1), whole(74, 3)),
    ...row(whole(75, 0), whole(76, 0), whole(77, 0), whole(78, 0)),
  ];
}

const lineType = (name: string, handle: string): readonly Tag[] => [
  ...record('LTYPE', handle, HANDLE.ltypeTable, 'AcDbLinetypeTableRecord', name),
  ...row(text(3, ''), whole(72, 65), whole(73, 0), real(40, 0)),
];

/** 370 -3: default line weight. 390: the plot style that all layers share. */
const layer = (name: string, colorIndex: number, handle: string): readonly Tag[] => [
  ...record('LAYER', handle, HANDLE.layerTable, 'AcDbLayerTableRecord', name),
  ...row(whole(62, colorIndex), text(6, 'Continuous'), whole(370, -3), text(390, HANDLE.plotStyleNormal)),
];

/** No text is written, but the dimension style and readers look for this one. */
const textStyle: readonly Tag[] = [
  ...record('STYLE', HANDLE.style, HANDLE.styleTable, 'AcDbTextStyleTableRecord', 'Standard'),
  ...row(real(40, 0), real(41, 1), real(50, 0), whole(71, 0), real(42, 2.5), text(3, 'txt'), text(4, '')),
];

const dimStyle: readonly Tag[] = [
  ...record('DIMSTYLE', HANDLE.dimstyle, HANDLE.dimstyleTable, 'AcDbDimStyleTableRecord', 'Standard', 105),
  text(340, HANDLE.style),
];

const blockRecord = (name: string, handle: string, layout: string): readonly Tag[] => [
  text(0, 'BLOCK_RECORD'),
  text(5, handle),
  text(330, HANDLE.blockRecordTable),
  text(100, 'AcDbSymbolTableRecord'),
  text(100, 'AcDbBlockTableRecord'),
  text(2, name),
  text(340, layout),
];
