import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import * as fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { checkDxf } from '../../core/files/check-dxf.ts';
import type { Drawing, DxfSettings } from '../../core/files/drawing.ts';
import { writeDxf } from '../../core/files/dxf.ts';
import { signedArea } from '../../core/geometry/measure.ts';
import type { Contour } from '../../core/geometry/types.ts';
import { readWithDxfPackage } from '../readers/dxf-npm.ts';
import { readWithDxfParser } from '../readers/dxf-parser.ts';
import { readWithEzdxf, type EzdxfReport } from '../readers/ezdxf.ts';
import type { ReadDxf } from '../readers/types.ts';
import { differencesOf } from './differences.ts';
import { expectedDxf } from './expected-dxf.ts';
import { randomDrawings } from './random-drawing.ts';
import {
  ALL_SETTINGS,
  circle,
  drawingOf,
  feature,
  LAYERS,
  path,
  PLATE,
  ring,
  SETTINGS,
} from './sample-drawing.ts';
import { trueExtents } from './true-extents.ts';

const SEED = 20240917;
const folder = mkdtempSync(join(tmpdir(), 'dxf-test-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Settings with which the file has exactly the drawing's own segments. */
const EXACT = ALL_SETTINGS.filter(({ arcsAsLines, repeatFirstPoint }) => !arcsAsLines && !repeatFirstPoint);

const labelOf = (settings: DxfSettings): string => JSON.stringify(settings);

/** The text, after making sure that nothing was found. */
function written(drawing: Drawing, settings: DxfSettings): string {
  const { value, findings } = writeDxf(drawing, settings);
  expect(findings).toEqual([]);
  return value;
}

interface Case {
  readonly label: string;
  readonly drawing: Drawing;
  readonly settings: DxfSettings;
}

interface ReadCase extends Case {
  readonly text: string;
  readonly report: EzdxfReport;
}

/** Writes all cases and reads them with the strict reader in one process. */
function readStrictly(cases: readonly Case[]): readonly ReadCase[] {
  const texts = cases.map(({ drawing, settings }) => written(drawing, settings));
  const paths = texts.map((text, index) => {
    const path = join(folder, `${index}.dxf`);
    writeFileSync(path, text);
    return path;
  });
  const reports = readWithEzdxf(paths);
  return cases.map(({ label, drawing, settings }, index) => {
    const [text, report] = [texts[index], reports[index]];
    if (text === undefined || report === undefined) throw new Error(`${label} was not read`);
    return { label, drawing, settings, text, report };
  });
}

/** What the three readers and the audit of the strict one have against a file; a sentence each. */
function complaints(read: ReadCase): readonly string[] {
  const { label, text, report } = read;
  const readers = { ezdxf: report, dxfParser: readWithDxfParser(text), dxf: readWithDxfPackage(text) };
  const against = Object.entries(readers).flatMap(([name, seen]) =>
    complaintsOf(seen, read).map((words) => `${label} ${name}: ${words}`),
  );
  return [...auditOf(label, report), ...against];
}

function complaintsOf(seen: ReadDxf, { drawing, settings }: ReadCase): readonly string[] {
  const [insunits, measurement] = settings.unit === 'mm' ? [4, 1] : [1, 0];
  const scale = settings.unit === 'mm' ? 1 : 25.4;
  const extents = trueExtents(drawing);
  const off = seen.extents.map((side, index) => Math.abs(side * scale - (extents[index] ?? NaN)));
  const units = seen.insunits === insunits && seen.measurement === measurement;
  return [
    ...differencesOf(seen, expectedDxf(drawing, settings)),
    ...(units ? [] : [`unit ${seen.insunits}, measurement ${seen.measurement}`]),
    ...(off.every((side) => side <= 1e-3) ? [] : [`extents off by ${off.join()} mm`]),
  ];
}

const auditOf = (label: string, { failure, errors, fixes }: EzdxfReport): readonly string[] => [
  ...(failure === null ? [] : [`${label} failed: ${failure}`]),
  ...errors.map((words) => `${label} error: ${words}`),
  ...fixes.map((words) => `${label} fix: ${words}`),
];

describe('writeDxf read by others', () => {
  test('DXF-1, DXF-3: three readers see every entity of the plate, and the audit of a strict one finds and fixes nothing', () => {
    const cases = EXACT.map((settings) => ({ label: labelOf(settings), drawing: PLATE, settings }));
    expect(readStrictly(cases).flatMap(complaints)).toEqual([]);
  });

  test(`DXF-1, DXF-2, DXF-3: 100 random drawings, seed ${SEED}, in both versions and units, are the same to three readers and to the checker`, () => {
    const drawings = fc.sample(randomDrawings, { seed: SEED, numRuns: 100 });
    const cases = drawings.flatMap((drawing, index) =>
      EXACT.map((settings) => ({ label: `drawing ${index} ${labelOf(settings)}`, drawing, settings })),
    );
    const read = readStrictly(cases);
    expect(read.flatMap(complaints)).toEqual([]);
    expect(read.flatMap(({ text, settings }) => checkDxf(text, settings))).toEqual([]);
  });

  test('DXF-1, DXF-4: with every switch, the strict reader finds and fixes nothing and sees one closed entity for each outline', () => {
    const cases = ALL_SETTINGS.map((settings) => ({ label: labelOf(settings), drawing: PLATE, settings }));
    const read = readStrictly(cases);
    expect(read.flatMap(({ label, report }) => auditOf(label, report))).toEqual([]);
    expect(read.flatMap(({ text, settings }) => checkDxf(text, settings))).toEqual([]);
    const outlines = PLATE.features.filter(({ contour }) => contour.kind !== 'path').length;
    for (const { label, report } of read) {
      const closed = report.entities.filter((entity) => entity.closed).length;
      expect({ label, closed, all: report.entities.length }).toEqual({
        label,
        closed: outlines,
        all: PLATE.features.length,
      });
    }
  });
});

describe('writeDxf', () => {
  test('DXF-1, DXF-3: says its version and unit, and is in mm as the profile says', () => {
    const r12 = readWithDxfParser(written(PLATE, SETTINGS));
    expect(written(PLATE, SETTINGS)).toContain('$ACADVER\r\n  1\r\nAC1009\r\n');
    expect(written(PLATE, { ...SETTINGS, version: 'R2000' })).toContain('$ACADVER\r\n  1\r\nAC1015\r\n');
    expect(r12).toMatchObject({ insunits: 4, measurement: 1 });
    // The plate's left side bulges inward and its half circle at the top reaches 15 mm above y = 40.
    expect(r12.extents).toEqual([-20, -10, 90, 55]);
  });

  test('DXF-3: an inch is 25.4 mm: a circle of 25.4 mm radius at (50.8, -76.2) has radius 1 at (2, -3)', () => {
    const text = written(drawingOf(feature('cut-inner', circle(50.8, -76.2, 25.4))), {
      ...SETTINGS,
      unit: 'in',
    });
    expect(readWithDxfParser(text).entities.map((entity) => entity.circle)).toEqual([[2, -3, 1]]);
  });

  test('GEOM: an outline of 40 segments, arcs among them, has 40 segments in the file', () => {
    const corners = Array.from({ length: 40 }, (_, index) => {
      const angle = (2 * Math.PI * index) / 40;
      return [60 * Math.cos(angle), 60 * Math.sin(angle), index % 2 === 0 ? 0.3 : 0] as const;
    });
    const drawing = drawingOf(feature('cut-outer', ring(...corners)));
    for (const settings of EXACT) {
      const [entity] = readWithDxfPackage(written(drawing, settings)).entities;
      expect(entity?.vertices.length).toBe(40);
      expect(entity?.vertices.filter(([, , bulge]) => bulge !== 0).length).toBe(20);
    }
  });

  test('DXF-4: repeats the first point only when told to, and then the outline stays closed', () => {
    const drawing = drawingOf(feature('cut-outer', ring([0, 0], [10, 0, 0.5], [10, 10])));
    for (const version of ['R12', 'R2000'] as const) {
      const once = readWithDxfParser(written(drawing, { ...SETTINGS, version })).entities[0];
      expect(once?.vertices).toEqual([
        [0, 0, 0],
        [10, 0, 0.5],
        [10, 10, 0],
      ]);
      const twice = readWithDxfParser(written(drawing, { ...SETTINGS, version, repeatFirstPoint: true }))
        .entities[0];
      expect(twice?.vertices).toEqual([
        [0, 0, 0],
        [10, 0, 0.5],
        [10, 10, 0],
        [0, 0, 0],
      ]);
      expect([once?.closed, twice?.closed]).toEqual([true, true]);
    }
  });

  test('DXF-4: draws arcs as lines whose corners lie on the arc and whose middles are 0.01 mm off at most', () => {
    const radii = [0.05, 1, 3.175, 40, 300];
    for (const radius of radii) {
      const drawing = drawingOf(feature('cut-inner', circle(0, 0, radius)));
      const [entity] = readWithDxfPackage(written(drawing, { ...SETTINGS, arcsAsLines: true })).entities;
      const corners = entity?.vertices ?? [];
      expect(entity?.type).toBe('POLYLINE');
      expect(corners.length).toBeGreaterThanOrEqual(6);
      for (const [index, [x, y, bulge]] of corners.entries()) {
        const [nextX, nextY] = corners[(index + 1) % corners.length] ?? [Number.NaN, Number.NaN];
        expect(bulge).toBe(0);
        expect(Math.abs(Math.hypot(x, y) - radius)).toBeLessThan(2e-6);
        const gap = radius - Math.hypot((x + nextX) / 2, (y + nextY) / 2);
        expect(gap).toBeLessThan(0.01 + 2e-6);
      }
    }
  });

  test('DXF-4: arcs as lines keep the ends of an arc, and the area within 0.01 mm times its length', () => {
    const slot = ring([0, 0], [30, 0, 1], [30, 6.35], [0, 6.35, 1]);
    const text = written(drawingOf(feature('cut-inner', slot)), { ...SETTINGS, arcsAsLines: true });
    const corners = readWithDxfPackage(text).entities[0]?.vertices ?? [];
    for (const { x, y } of slot.vertices) expect(corners).toContainEqual([x, y, 0]);
    const drawn = shoelace(corners);
    expect(Math.abs(drawn - signedArea(slot))).toBeLessThan(0.01 * Math.PI * 6.35);
  });

  test('DXF-5: nothing is on layer 0, entities have no colour of their own, and unused operations have no layer', () => {
    for (const settings of EXACT) {
      const text = written(drawingOf(feature('drill', circle(0, 0, 2))), settings);
      expect(readWithDxfParser(text).layers).toEqual({ '0': 7, DRILL: 3 });
      const entities = text.slice(text.indexOf('ENTITIES'), text.indexOf('ENDSEC', text.indexOf('ENTITIES')));
      expect(entities).not.toMatch(/\n {2}8\r\n0\r\n/);
      expect(entities).not.toMatch(/\n 62\r\n/);
    }
  });

  test.each(['cut', 'CUT OUTER', 'CUT.1', 'SCHNITT_Ä', '', '0', 'X'.repeat(32)])(
    'DXF-5: refuses the layer name “%s”, with no text',
    (name) => {
      const layers = { ...LAYERS, drill: { ...LAYERS.drill, name } };
      const { value, findings } = writeDxf(
        { ...drawingOf(feature('drill', circle(0, 0, 2))), layers },
        SETTINGS,
      );
      expect(value).toBe('');
      expect(findings.map(({ code, severity }) => [code, severity])).toEqual([['files/layer-name', 'error']]);
    },
  );

  test('DXF-5: takes a name of 31 characters, and refuses one name for two operations', () => {
    const drawing = drawingOf(feature('drill', circle(0, 0, 2)), feature('pocket', circle(9, 0, 2)));
    const long = { ...LAYERS, drill: { ...LAYERS.drill, name: 'A_-9'.repeat(8).slice(0, 31) } };
    expect(writeDxf({ ...drawing, layers: long }, SETTINGS).findings).toEqual([]);
    const shared = { ...LAYERS, drill: { ...LAYERS.drill, name: LAYERS.pocket.name } };
    const { value, findings } = writeDxf({ ...drawing, layers: shared }, SETTINGS);
    expect(value).toBe('');
    expect(findings.map(({ code }) => code)).toEqual(['files/layer-shared']);
  });

  const bad: readonly (readonly [string, Contour])[] = [
    ['NaN', ring([0, 0], [Number.NaN, 0], [5, 5])],
    ['infinite', circle(0, Number.POSITIVE_INFINITY, 2)],
    ['a radius of 0', circle(0, 0, 0)],
    ['a radius of NaN', circle(0, 0, Number.NaN)],
    ['a bulge beyond 1', ring([0, 0], [5, 0, 1.2], [5, 5])],
    ['a side of 0.0005 mm', ring([0, 0], [5, 0], [5, 0.0005], [5, 5])],
    ['a repeated first vertex', ring([0, 0], [5, 0], [5, 5], [0, 0])],
    ['one vertex', ring([0, 0])],
    ['sides that cross', ring([0, 0], [5, 5], [5, 0], [0, 5])],
    ['a place 2 km away', circle(2e6, 0, 1)],
  ];
  test.each(bad)('DXF-2: refuses geometry with %s, with no text', (_, contour) => {
    const { value, findings } = writeDxf(drawingOf(feature('cut-outer', contour)), SETTINGS);
    expect(value).toBe('');
    expect(findings.map(({ code }) => code)).toContain('files/geometry');
    expect(findings.every(({ severity }) => severity === 'error')).toBe(true);
  });

  test('DXF-4: refuses an open contour on a cut layer and takes it on the engraving layer', () => {
    const open = path([0, 0], [5, 0], [5, 5]);
    for (const operation of ['drill', 'pocket', 'cut-inner', 'cut-outer'] as const) {
      const { value, findings } = writeDxf(drawingOf(feature(operation, open)), SETTINGS);
      expect(value).toBe('');
      expect(findings.map(({ code }) => code)).toEqual(['files/open-contour']);
    }
    const [entity] = readWithDxfParser(written(drawingOf(feature('engrave', open)), SETTINGS)).entities;
    expect(entity).toMatchObject({ layer: 'ENGRAVE', closed: false });
  });

  test('DXF-7: letters become open polylines on the engraving layer, and nothing else is drawn but outlines and circles', () => {
    for (const settings of ALL_SETTINGS) {
      const { entities } = readWithDxfParser(written(PLATE, settings));
      const types = new Set(entities.map(({ type }) => type));
      const polyline = settings.version === 'R12' ? 'POLYLINE' : 'LWPOLYLINE';
      expect(types).toEqual(new Set(settings.arcsAsLines ? [polyline] : [polyline, 'CIRCLE']));
      const engraved = entities.filter(({ layer }) => layer === 'ENGRAVE');
      expect(engraved.length).toBeGreaterThan(10);
      expect(engraved.every(({ closed }) => !closed)).toBe(true);
    }
  });

  test('refuses an empty drawing', () => {
    const { value, findings } = writeDxf(drawingOf(), SETTINGS);
    expect([value, findings.map(({ code }) => code)]).toEqual(['', ['files/nothing']]);
  });

  test('EXP: the same drawing and settings give the same bytes', () => {
    const copy = structuredClone(PLATE);
    for (const settings of ALL_SETTINGS) expect(written(copy, settings)).toBe(written(PLATE, settings));
  });
});

const shoelace = (corners: readonly (readonly [number, number, number])[]): number =>
  corners.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = corners[(index + 1) % corners.length] ?? [Number.NaN, Number.NaN];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
