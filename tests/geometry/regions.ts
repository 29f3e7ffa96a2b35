import * as fc from 'fast-check';
import { circle } from '../../core/geometry/circle.ts';
import { polygon } from '../../core/geometry/polygon.ts';
import { roundedRectangle } from './rounded-rectangle.ts';
import type { ClosedContour } from '../../core/geometry/types.ts';

/**
 * Pairs of areas on one grid, so that sides fall on each other, corners on sides, and circles touch sides and
 * each other: the cases that floating point booleans get wrong.
 */
export interface RegionPair {
  readonly a: readonly ClosedContour[];
  readonly b: readonly ClosedContour[];
}

const grid = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });

/** Rectangles, slots, triangles and circles, sizes and places in whole steps. */
const shape = (unit: number): fc.Arbitrary<ClosedContour> =>
  fc.oneof(
    fc
      .record({ x: grid(-4, 26), y: grid(-4, 16), w: grid(1, 16), h: grid(1, 12), r: grid(0, 4) })
      .map(({ x, y, w, h, r }) =>
        roundedRectangle(w * unit, h * unit, Math.min(r, w / 2, h / 2) * unit, {
          x: x * unit,
          y: y * unit,
        }),
      ),
    fc
      .record({ x: grid(-2, 30), y: grid(-2, 20), r: grid(1, 6) })
      .map(({ x, y, r }) => circle({ x: x * unit, y: y * unit }, r * unit)),
    fc
      .record({ x: grid(0, 24), y: grid(0, 14), w: grid(1, 9), h: grid(1, 9), lean: grid(-3, 3) })
      .map(({ x, y, w, h, lean }) =>
        polygon(
          [
            [x, y],
            [x + w, y],
            [x + lean, y + h],
          ].map(([px = 0, py = 0]) => ({ x: px * unit, y: py * unit })),
        ),
      ),
  );

/** A plate of 30 x 20 steps, sometimes rounded or bored, and one to five shapes that lie over it somewhere. */
export const regionPairs: fc.Arbitrary<RegionPair> = fc
  .constantFrom(1, 0.5, 0.1, 25.4 / 16, 25.4 / 64)
  .chain((unit) =>
    fc
      .record({
        radius: grid(0, 4),
        bore: fc.option(fc.record({ x: grid(8, 22), y: grid(8, 12), r: grid(1, 4) })),
        b: fc.array(shape(unit), { minLength: 1, maxLength: 5 }),
      })
      .map(({ radius, bore, b }) => ({
        a: [
          roundedRectangle(30 * unit, 20 * unit, radius * unit),
          ...(bore === null ? [] : [circle({ x: bore.x * unit, y: bore.y * unit }, bore.r * unit)]),
        ],
        b,
      })),
  );
