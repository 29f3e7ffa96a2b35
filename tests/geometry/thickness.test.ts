import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { reverseRing } from '../../core/geometry/orient.ts';
import { rectangle } from '../../core/geometry/rectangle.ts';
import { segmentsOf } from '../../core/geometry/segments.ts';
import { pointThatDeep } from '../../core/geometry/thickness.ts';
import type { Point, RingContour } from '../../core/geometry/types.ts';
import { contourProblems } from '../../core/geometry/validate.ts';
import { plate, plateRecipes } from './plates.ts';
import { distanceToSides, isInside, referenceOffset, sampled } from './reference.ts';

/** The inside of a counter-clockwise ring is on the right of its reverse. */
const inside = (ring: RingContour, deep: number): Point | null =>
  pointThatDeep(segmentsOf(reverseRing(ring)), deep, 0.001);

describe('pointThatDeep', () => {
  test('pointThatDeep(100 x 10) finds 4.99 mm and denies 5.01 mm', () => {
    expect(inside(rectangle(100, 10), 4.99)).not.toBeNull();
    expect(inside(rectangle(100, 10), 5.01)).toBeNull();
  });

  test('OFF-2 pointThatDeep(random plates, d) is a point inside that deep, and null only where no disc fits', () => {
    fc.assert(
      fc.property(plateRecipes, fc.double({ min: 0.5, max: 40, noNaN: true }), (recipe, deep) => {
        const ring = plate(recipe);
        fc.pre(contourProblems(ring).length === 0);
        const found = inside(ring, deep);
        if (found === null) {
          expect(referenceOffset(ring, -deep - 0.001, 0.001)).toEqual([]);
          return;
        }
        const outline = sampled(ring, 0.0002);
        expect(isInside(found, outline)).toBe(true);
        expect(distanceToSides(found, outline)).toBeGreaterThanOrEqual(deep - 0.0013);
      }),
      { seed: 20_260_209, numRuns: 200 },
    );
  });
});
