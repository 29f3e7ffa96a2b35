import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Operation } from '../../core/machine/operations.ts';
import { exportReport } from '../../core/files/report.ts';
import { perimeter } from '../../core/geometry/measure.ts';
import { randomDrawings } from './random-drawing.ts';
import { circle, drawingOf, feature, path, PLATE, ring } from './sample-drawing.ts';
import { trueExtents } from './true-extents.ts';

const SEED = 424_242;

describe('exportReport', () => {
  test('EXP: counts and measures a drawing whose numbers are known', () => {
    const drawing = drawingOf(
      feature('cut-outer', ring([0, 0], [100, 0], [100, 50], [0, 50])),
      feature('cut-inner', circle(50, 25, 10)),
      feature('pocket', ring([10, 10], [20, 10], [20, 20], [10, 20])),
      feature('engrave', path([5, 5], [8, 9], [8, 19])),
    );
    const { value, findings } = exportReport(drawing, 'in');
    expect(findings).toEqual([]);
    expect(value).toMatchObject({
      unit: 'in',
      entities: 4,
      engraveLength: 15,
      openContoursOnCutLayers: 0,
      duplicatesRemoved: 0,
      extents: { minX: 0, minY: 0, maxX: 100, maxY: 50 },
    });
    expect(value?.cutLength).toBeCloseTo(300 + 20 * Math.PI + 40, 9);
  });

  test(`EXP: lengths and extents of 200 random drawings, seed ${SEED}, are those of the geometry`, () => {
    fc.assert(
      fc.property(randomDrawings, (drawing) => {
        const { value } = exportReport(drawing, 'mm');
        if (value === null) throw new Error('the drawing was refused');
        const lengths = drawing.features.map(({ operation, contour }) => ({
          operation,
          length: perimeter(contour),
        }));
        const sum = (counts: (operation: Operation) => boolean): number =>
          lengths.reduce((total, { operation, length }) => total + (counts(operation) ? length : 0), 0);
        // Tabs are marked, neither cut nor engraved.
        const isCut = (operation: Operation): boolean => operation !== 'engrave' && operation !== 'tab';
        expect(value.cutLength).toBeCloseTo(sum(isCut), 6);
        expect(value.engraveLength).toBeCloseTo(
          sum((operation) => operation === 'engrave'),
          6,
        );
        expect(value.entities).toBe(drawing.features.length);
        const { minX, minY, maxX, maxY } = value.extents;
        for (const [index, side] of [minX, minY, maxX, maxY].entries()) {
          expect(Math.abs(side - (trueExtents(drawing)[index] ?? Number.NaN))).toBeLessThan(1e-3);
        }
      }),
      { seed: SEED, numRuns: 200, endOnFailure: true },
    );
  });

  test('EXP: there is no report of a drawing that is refused', () => {
    const { value, findings } = exportReport(drawingOf(feature('cut-outer', path([0, 0], [9, 0]))), 'mm');
    expect([value, findings.map(({ code }) => code)]).toEqual([null, ['files/open-contour']]);
  });

  test('EXP: the same drawing gives the same report', () => {
    expect(exportReport(structuredClone(PLATE), 'mm')).toEqual(exportReport(PLATE, 'mm'));
  });
});
