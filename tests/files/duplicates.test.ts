import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withoutDuplicates } from '../../core/files/duplicates.ts';
import { writeDxf } from '../../core/files/dxf.ts';
import { exportReport } from '../../core/files/report.ts';
import { reverseRing } from '../../core/geometry/orient.ts';
import type { RingContour } from '../../core/geometry/types.ts';
import type { Feature } from '../../core/parts/types.ts';
import { readWithDxfParser } from '../readers/dxf-parser.ts';
import { randomDrawings } from './random-drawing.ts';
import { circle, drawingOf, feature, path, PLATE, ring, SETTINGS } from './sample-drawing.ts';

const SEED = 711;
const SQUARE = ring([0, 0], [10, 0], [10, 10], [0, 10]);
const SLOT = ring([0, 0], [30, 0, 1], [30, 6], [0, 6, 1]);

/** The same ring from another vertex on. */
const startingAt = ({ vertices }: RingContour, first: number): RingContour => ({
  kind: 'ring',
  vertices: [...vertices.slice(first), ...vertices.slice(0, first)],
});

const removedFrom = (...features: readonly Feature[]): number => withoutDuplicates(features).removed;

describe('withoutDuplicates', () => {
  test('DXF-6: leaves a drawing without duplicates as it is', () => {
    const { features, removed, findings } = withoutDuplicates(PLATE.features);
    expect([features, removed, findings]).toEqual([PLATE.features, 0, []]);
  });

  test('DXF-6: draws an outline once, wherever its copy starts and whichever way it runs', () => {
    const copies = [SLOT, startingAt(SLOT, 2), reverseRing(SLOT), startingAt(reverseRing(SLOT), 3)];
    for (const copy of copies) {
      const { features, removed, findings } = withoutDuplicates([
        feature('cut-inner', SLOT),
        feature('cut-inner', copy),
      ]);
      expect([features, removed, findings]).toEqual([[feature('cut-inner', SLOT)], 1, []]);
    }
  });

  test('DXF-6: draws a circle once, also where the copy is a ring of arcs or 0.0005 mm beside it', () => {
    const hole = feature('drill', circle(5, 5, 3));
    const arcs = feature('drill', ring([8, 5, Math.SQRT2 - 1], [5, 8, Math.SQRT2 - 1], [2, 5, 1]));
    expect(removedFrom(hole, feature('drill', circle(5, 5, 3)))).toBe(1);
    expect(removedFrom(hole, feature('drill', circle(5.0005, 5, 3)))).toBe(1);
    expect(removedFrom(hole, arcs)).toBe(1);
    expect(removedFrom(arcs, hole)).toBe(1);
    expect(removedFrom(hole, feature('drill', circle(5, 5, 3.1)))).toBe(0);
  });

  test('DXF-6: keeps the same outline on another operation or of another depth', () => {
    expect(removedFrom(feature('pocket', SQUARE), feature('cut-inner', SQUARE))).toBe(0);
    const deeper = withoutDuplicates([
      { ...feature('pocket', SQUARE), depth: 3 },
      { ...feature('pocket', SQUARE), depth: 5 },
    ]);
    expect([deeper.removed, deeper.findings.map(({ code }) => code)]).toEqual([0, ['files/overlap']]);
  });

  test('DXF-6: draws a line of engraving once and keeps the rest of its path', () => {
    const first = feature('engrave', path([0, 0], [10, 0]));
    const second = feature('engrave', path([0, 5], [0, 0], [10, 0], [10, 5], [12, 5]));
    const { features, removed } = withoutDuplicates([first, second]);
    expect(removed).toBe(1);
    expect(features).toEqual([
      first,
      feature('engrave', path([0, 5], [0, 0])),
      feature('engrave', path([10, 0], [10, 5], [12, 5])),
    ]);
  });

  test('DXF-6: a path that goes back over itself is drawn once', () => {
    const { features, removed } = withoutDuplicates([
      feature('engrave', path([0, 0], [10, 0], [4, 0], [4, 7])),
    ]);
    expect(removed).toBe(1);
    expect(features.map(({ contour }) => contour)).toEqual([path([0, 0], [10, 0]), path([4, 0], [4, 7])]);
  });

  test('DXF-6: reports the edge that two outlines share, its length and place, and opens neither', () => {
    const beside = ring([10, 2], [20, 2], [20, 8], [10, 8]);
    const { features, removed, findings } = withoutDuplicates([
      feature('cut-outer', SQUARE),
      feature('cut-outer', beside),
    ]);
    expect([features.length, removed]).toEqual([2, 0]);
    expect(findings).toMatchObject([
      { code: 'files/overlap', severity: 'warning', values: { length: 6, x: 10, y: 5 } },
    ]);
  });

  test('DXF-6: reports an outline that comes back along its own arc', () => {
    const { removed, findings } = withoutDuplicates([feature('engrave', ring([0, 0, -1], [10, 0, 1]))]);
    expect([removed, findings.map(({ code }) => code)]).toEqual([0, ['files/overlap']]);
    expect(findings[0]?.message).toContain('Contour 1 (engrave) runs over itself for 15.708 mm');
  });

  test('DXF-6: reports overlapping arcs, once for two outlines', () => {
    const moon = ring([30, 0, 1], [30, 6]);
    const { findings } = withoutDuplicates([feature('cut-inner', SLOT), feature('cut-inner', moon)]);
    expect(findings.map(({ code }) => code)).toEqual(['files/overlap']);
    expect(Number(findings[0]?.values['length'])).toBeCloseTo(3 * Math.PI, 3);
  });

  test('DXF-6: crossing, touching, tangent and slightly turned lines do not overlap', () => {
    const pairs = [
      [path([0, 0], [10, 10]), path([0, 10], [10, 0])],
      [path([0, 0], [10, 0]), path([10, 0], [20, 0])],
      [path([0, 0], [10, 0]), path([5, 0], [5, 9])],
      [path([0, 0], [1000, 0]), path([0, -1], [1000, 1])],
      [path([0, 0], [10, 0, 0.4], [20, 10]), path([0, 0.02], [10, 0.02])],
      [circle(0, 0, 5), circle(10, 0, 5)],
      [path([0, 0], [10, 0]), path([9.995, 0], [20, 0])],
    ] as const;
    for (const [a, b] of pairs) {
      const { removed, findings } = withoutDuplicates([feature('engrave', a), feature('engrave', b)]);
      expect([removed, findings]).toEqual([0, []]);
    }
  });

  test(`DXF-6: of a random drawing twice over, seed ${SEED}, every closed contour and every engraved segment is left once`, () => {
    fc.assert(
      fc.property(randomDrawings, ({ features }) => {
        const again = features.map((one): Feature => ({
          ...one,
          contour: one.contour.kind === 'ring' ? reverseRing(one.contour) : one.contour,
        }));
        const once = withoutDuplicates(features);
        const twice = withoutDuplicates([...features, ...again]);
        expect(once.removed).toBe(0);
        expect(twice.features).toEqual(features);
        expect(twice.removed).toBeGreaterThanOrEqual(features.length);
      }),
      { seed: SEED, numRuns: 200, endOnFailure: true },
    );
  });
});

describe('writeDxf', () => {
  test('DXF-6: leaves duplicates out of the file, and the report counts them', () => {
    const drawing = drawingOf(
      feature('cut-inner', SLOT),
      feature('cut-inner', reverseRing(SLOT)),
      feature('drill', circle(50, 0, 2)),
    );
    const { entities } = readWithDxfParser(writeDxf(drawing, SETTINGS).value);
    expect(entities.map(({ type }) => type)).toEqual(['CIRCLE', 'POLYLINE']);
    expect(exportReport(drawing, 'mm').value).toMatchObject({ duplicatesRemoved: 1, entities: 2 });
  });
});
