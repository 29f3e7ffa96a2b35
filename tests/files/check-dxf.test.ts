import { describe, expect, test } from 'vitest';
import { checkDxf } from '../../core/files/check-dxf.ts';
import type { DxfSettings } from '../../core/files/drawing.ts';
import { writeDxf } from '../../core/files/dxf.ts';
import { ALL_SETTINGS, circle, drawingOf, feature, PLATE, ring, SETTINGS } from './sample-drawing.ts';

/** A rounded plate with a hole: every kind of group that a file has, and short enough to damage by hand. */
const SMALL = drawingOf(
  feature('cut-inner', circle(10, 20, 3.175)),
  feature('cut-outer', ring([0, 0], [40, 0, 0.4], [40, 30], [0, 30])),
);

const R12 = SETTINGS;
const R2000: DxfSettings = { ...SETTINGS, version: 'R2000' };

/** The good file with one thing in it replaced; the thing must be there once from `after` on. */
function damaged(settings: DxfSettings, after: string, from: string, to: string): string {
  const { value } = writeDxf(SMALL, settings);
  const start = value.indexOf(after);
  const place = value.indexOf(from, start);
  if (start < 0 || place < 0) throw new Error(`${after} … ${from} is not in the file`);
  return value.slice(0, place) + to + value.slice(place + from.length);
}

/** `  0` and `POLYLINE`, as the file has them, from `0 POLYLINE`. */
const lines = (...tags: readonly string[]): string =>
  tags
    .map((tag) => {
      const [code = '', ...value] = tag.split(' ');
      return `${code.padStart(3)}\r\n${value.join(' ')}\r\n`;
    })
    .join('');

const codesOf = (text: string, settings: DxfSettings): readonly string[] => [
  ...new Set(checkDxf(text, settings).map(({ code }) => code)),
];

type Damage = readonly [
  what: string,
  settings: DxfSettings,
  after: string,
  from: string,
  to: string,
  codes: readonly string[],
];

const damages: readonly Damage[] = [
  [
    'NaN as a coordinate',
    R12,
    'VERTEX',
    lines('20 0.000000'),
    lines('20 NaN'),
    ['dxf/number', 'dxf/extents'],
  ],
  ['a coordinate with an exponent', R12, 'VERTEX', lines('20 0.000000'), lines('20 1e-7'), ['dxf/number']],
  [
    'a coordinate with 5 places',
    R2000,
    'AcDbPolyline',
    lines('10 40.000000'),
    lines('10 40.00000'),
    ['dxf/number'],
  ],
  ['a negative zero', R2000, 'AcDbPolyline', lines('10 0.000000'), lines('10 -0.000000'), ['dxf/number']],
  [
    'a comma for the point',
    R12,
    'CIRCLE',
    lines('40 3.175000'),
    lines('40 3,175000'),
    ['dxf/number', 'dxf/extents', 'dxf/radius'],
  ],
  ['a bulge with 6 places', R12, 'VERTEX', lines('42 0.400000000'), lines('42 0.400000'), ['dxf/number']],
  [
    'a bulge beyond 1',
    R2000,
    'AcDbPolyline',
    lines('42 0.400000000'),
    lines('42 1.400000000'),
    ['dxf/extents', 'dxf/bulge'],
  ],
  ['a vertex count too high', R2000, 'AcDbPolyline', lines('90 4'), lines('90 5'), ['dxf/vertex-count']],
  [
    'a vertex count that is no whole number',
    R2000,
    'AcDbPolyline',
    lines('90 4'),
    lines('90 4.0'),
    ['dxf/number'],
  ],
  ['a radius of 0', R12, 'CIRCLE', lines('40 3.175000'), lines('40 0.000000'), ['dxf/radius']],
  ['a negative radius', R2000, 'AcDbCircle', lines('40 3.175000'), lines('40 -3.175000'), ['dxf/radius']],
  [
    'a side of 0.0005 mm',
    R12,
    'VERTEX',
    lines('10 0.000000', '20 30.000000'),
    lines('10 39.999500', '20 30.000000'),
    ['dxf/short-segment'],
  ],
  [
    'a last vertex that repeats the first',
    R2000,
    'AcDbPolyline',
    lines('10 0.000000', '20 30.000000'),
    lines('10 0.000000', '20 0.000000'),
    ['dxf/repeated-vertex'],
  ],
  ['the handle of another entity', R2000, 'ENTITIES', lines('5 101'), lines('5 100'), ['dxf/handle']],
  ['the handle of a table', R2000, 'ENTITIES', lines('5 101'), lines('5 3'), ['dxf/handle']],
  ['no handle', R2000, 'ENTITIES', lines('5 101'), '', ['dxf/handle']],
  ['a handle seed that is taken', R2000, '$HANDSEED', lines('5 102'), lines('5 101'), ['dxf/handle']],
  ['an owner that is not there', R2000, 'ENTITIES', lines('330 17'), lines('330 ABC'), ['dxf/pointer']],
  ['an undeclared layer', R12, 'ENTITIES', lines('8 CUT_INNER'), lines('8 CUT_INNEN'), ['dxf/layer']],
  [
    'a layer missing from the table',
    R2000,
    'AcDbLayerTableRecord',
    lines('2 CUT_INNER'),
    lines('2 OTHER'),
    ['dxf/layer'],
  ],
  ['an entity on layer 0', R12, 'ENTITIES', lines('8 CUT_INNER'), lines('8 0'), ['dxf/layer']],
  ['a vertex on layer 0', R12, 'VERTEX', lines('8 CUT_OUTER'), lines('8 0'), ['dxf/layer']],
  ['a lower-case layer', R12, 'TABLES', lines('2 CUT_INNER'), lines('2 cut_inner'), ['dxf/layer']],
  ['a layer declared twice', R12, 'TABLES', lines('2 CUT_INNER'), lines('2 CUT_OUTER'), ['dxf/layer']],
  ['a colour of its own', R12, 'CIRCLE', lines('8 CUT_INNER'), lines('8 CUT_INNER', '62 1'), ['dxf/color']],
  [
    'a TEXT',
    R12,
    'ENTITIES',
    lines('0 CIRCLE'),
    lines('0 TEXT', '8 CUT_INNER', '1 B1', '0 CIRCLE'),
    ['dxf/entity-type'],
  ],
  ['an ELLIPSE', R2000, 'ENTITIES', lines('0 CIRCLE'), lines('0 ELLIPSE'), ['dxf/entity-type']],
  ['a SPLINE', R2000, 'ENTITIES', lines('0 CIRCLE'), lines('0 SPLINE'), ['dxf/entity-type']],
  [
    'a loose LINE',
    R12,
    'ENTITIES',
    lines('0 CIRCLE'),
    lines('0 LINE', '8 CUT_INNER', '10 0.000000', '0 CIRCLE'),
    ['dxf/entity-type'],
  ],
  [
    'an INSERT',
    R12,
    'ENTITIES',
    lines('0 CIRCLE'),
    lines('0 INSERT', '8 CUT_INNER', '2 A', '0 CIRCLE'),
    ['dxf/entity-type'],
  ],
  [
    'an LWPOLYLINE in R12',
    R12,
    'ENTITIES',
    lines('0 CIRCLE'),
    lines('0 LWPOLYLINE'),
    ['dxf/entity-type', 'dxf/vertex-count'],
  ],
  ['the wrong version', R12, '$ACADVER', lines('1 AC1009'), lines('1 AC1015'), ['dxf/version']],
  ['the wrong unit', R12, '$INSUNITS', lines('70 4'), lines('70 1'), ['dxf/unit']],
  ['English measurement in a file in mm', R12, '$MEASUREMENT', lines('70 1'), lines('70 0'), ['dxf/unit']],
  ['a missing unit', R2000, 'HEADER', lines('9 $INSUNITS', '70 4'), '', ['dxf/unit']],
  ['extents 0.002 mm off', R12, '$EXTMIN', lines('10 0.000000'), lines('10 0.002000'), ['dxf/extents']],
  ['a missing SEQEND', R12, 'ENTITIES', lines('0 SEQEND', '8 CUT_OUTER'), '', ['dxf/structure']],
  ['a missing ENDSEC', R12, 'TABLES', lines('0 ENDSEC'), '', ['dxf/structure']],
  ['a missing EOF', R12, 'ENTITIES', lines('0 EOF'), '', ['dxf/structure']],
  ['a code without a value', R12, 'ENTITIES', lines('0 EOF'), '  0\r\nEOF\r\n  0\r\n', ['dxf/structure']],
  [
    'words for a group code',
    R12,
    'ENTITIES',
    lines('8 CUT_INNER'),
    lines('x CUT_INNER'),
    ['dxf/structure', 'dxf/layer'],
  ],
];

describe('checkDxf', () => {
  test.each(ALL_SETTINGS)('DXF-2: finds nothing in a good file: %o', (settings) => {
    expect(checkDxf(writeDxf(PLATE, settings).value, settings)).toEqual([]);
  });

  test.each(damages)('DXF-2: finds %s', (_, settings, after, from, to, codes) => {
    const text = damaged(settings, after, from, to);
    expect([...codesOf(text, settings)].sort()).toEqual([...codes].sort());
  });

  test('DXF-2: names the line of what it found', () => {
    const text = damaged(R12, 'CIRCLE', lines('40 3.175000'), lines('40 3.1750'));
    const [finding] = checkDxf(text, R12);
    const line = Number(finding?.values['line']);
    expect(text.split('\r\n')[line - 1]).toBe('3.1750');
  });

  test('DXF-4: finds a first point that is repeated or not against the settings, and arcs where lines were asked for', () => {
    const { value } = writeDxf(SMALL, R2000);
    expect(codesOf(value, { ...R2000, repeatFirstPoint: true })).toEqual(['dxf/repeated-vertex']);
    expect(checkDxf(value, { ...R2000, arcsAsLines: true }).map(({ code }) => code)).toEqual([
      'dxf/arc',
      'dxf/arc',
    ]);
    const repeated = writeDxf(SMALL, { ...R2000, repeatFirstPoint: true }).value;
    expect(codesOf(repeated, R2000)).toEqual(['dxf/repeated-vertex']);
  });

  test('DXF-2: finds an empty text at fault', () => {
    expect(codesOf('', R12)).toContain('dxf/structure');
  });
});
