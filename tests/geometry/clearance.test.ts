import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { circle } from '../../core/geometry/circle.ts';
import { clearance } from '../../core/geometry/clearance.ts';
import { bounds } from '../../core/geometry/measure.ts';
import { rectangle } from '../../core/geometry/rectangle.ts';
import { rotate, translate } from '../../core/geometry/transform.ts';
import type { ClosedContour } from '../../core/geometry/types.ts';
import { contourProblems } from '../../core/geometry/validate.ts';
import { missed } from './near.ts';
import { plate, plateRecipes } from './plates.ts';
import { distanceToSides, isInside, pointsOn, sampled } from './reference.ts';

const plates = plateRecipes.map(plate).filter((ring) => contourProblems(ring).length === 0);

/** mm. Arcs flattened so finely, the sampled distance is off by no more than this. */
const FLAT = 0.002;

/** Least distance from corners and points of one outline to the flattened other, both ways; 0 if one is inside. */
function sampledClearance(a: ClosedContour, b: ClosedContour): number {
  const [flatA, flatB] = [sampled(a, FLAT), sampled(b, FLAT)];
  const [onA, onB] = [
    [...pointsOn(a, 8), ...flatA],
    [...pointsOn(b, 8), ...flatB],
  ];
  if (onA.some((point) => isInside(point, flatB)) || onB.some((point) => isInside(point, flatA))) return 0;
  return Math.min(
    ...onA.map((point) => distanceToSides(point, flatB)),
    ...onB.map((point) => distanceToSides(point, flatA)),
  );
}

describe('clearance', () => {
  // Worked by hand; the second is the diagonal of a 3-4-5 triangle, the third two radii off the centre distance.
  test.each([
    [rectangle(10, 10), rectangle(10, 10, { x: 16, y: 2 }), 6],
    [rectangle(10, 10), rectangle(10, 10, { x: 13, y: 14 }), 5],
    [circle({ x: 0, y: 0 }, 4), circle({ x: 30, y: 40 }, 6), 40],
    [rectangle(10, 10), circle({ x: 20, y: 5 }, 3), 7],
    [rectangle(10, 10), rectangle(10, 10, { x: 10, y: 0 }), 0],
    [rectangle(10, 10), rectangle(2, 2, { x: 4, y: 4 }), 0],
    [rectangle(2, 2, { x: 4, y: 4 }), rectangle(10, 10), 0],
    [rectangle(10, 10), rectangle(30, 2, { x: -10, y: 4 }), 0],
  ])('measures what a rule measures: case %#', (a, b, expected) => {
    expect(missed(clearance(a, b), expected, 1e-9)).toBeNull();
  });

  test('is what dense samples of both outlines find, whatever their shape and turn', () => {
    fc.assert(
      fc.property(
        plates,
        plates,
        fc.integer({ min: 0, max: 359 }),
        fc.double({ min: -0.4, max: 0.6, noNaN: true }),
        (a, given, degrees, share) => {
          const b = rotate(given, degrees);
          const [boxA, boxB] = [bounds(a), bounds(b)];
          const shift = {
            x: boxA.max.x - boxB.min.x + share * 20,
            y: boxA.min.y - boxB.min.y + share * (boxA.max.y - boxA.min.y),
          };
          const moved = translate(b, shift);
          expect(missed(clearance(a, moved), sampledClearance(a, moved), 2 * FLAT)).toBeNull();
        },
      ),
      { seed: 20_261_125, numRuns: 250 },
    );
  });

  test('may say Infinity for what is far enough, and never for what is nearer', () => {
    const b = rectangle(10, 10, { x: 16, y: 0 });
    expect(clearance(rectangle(10, 10), b, 6)).toBe(Infinity);
    expect(clearance(rectangle(10, 10), b, 6.001)).toBe(6);
  });
});
