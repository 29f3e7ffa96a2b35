import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { circle } from '../../core/geometry/circle.ts';
import { bounds } from '../../core/geometry/measure.ts';
import { largestNotch } from '../../core/geometry/notch.ts';
import { polygon } from '../../core/geometry/polygon.ts';
import { rectangle } from '../../core/geometry/rectangle.ts';
import { rotate } from '../../core/geometry/transform.ts';
import { contourProblems } from '../../core/geometry/validate.ts';
import { missed } from './near.ts';
import { plate, plateRecipes } from './plates.ts';
import { isInside, pointsOn, sampled } from './reference.ts';

const ell = polygon([
  { x: 0, y: 0 },
  { x: 100, y: 0 },
  { x: 100, y: 30 },
  { x: 40, y: 30 },
  { x: 40, y: 80 },
  { x: 0, y: 80 },
]);
const plates = plateRecipes.map(plate).filter((ring) => contourProblems(ring).length === 0);

describe('largestNotch', () => {
  test.each([
    [0, 'top-right', 60, 50],
    [90, 'top-left', 50, 60],
    [180, 'bottom-left', 60, 50],
    [270, 'bottom-right', 50, 60],
  ] as const)('finds the inside of an L turned by %i degrees', (degrees, corner, width, height) => {
    const notch = largestNotch(rotate(ell, degrees));
    expect(notch?.corner).toBe(corner);
    expect(missed(notch?.width ?? 0, width, 0.011)).toBeNull();
    expect(missed(notch?.height ?? 0, height, 0.011)).toBeNull();
  });

  test('finds none in a rectangle, and the largest square beside a circle', () => {
    expect(largestNotch(rectangle(100, 40))).toBeNull();
    // The square between a circle's box and the circle: r (1 - 1/√2) on each side.
    const notch = largestNotch(circle({ x: 0, y: 0 }, 50));
    expect(missed((notch?.width ?? 0) * (notch?.height ?? 0), (50 * (1 - Math.SQRT1_2)) ** 2, 5)).toBeNull();
  });

  test('takes all outlines together', () => {
    const notch = largestNotch(ell, rectangle(20, 20, { x: 70, y: 20 }));
    expect(missed((notch?.width ?? 0) * (notch?.height ?? 0), 60 * 40, 3)).toBeNull();
  });

  test('leaves no point of any outline in the notch', () => {
    fc.assert(
      fc.property(plates, fc.integer({ min: 0, max: 359 }), (given, degrees) => {
        const outline = rotate(given, degrees);
        const notch = largestNotch(outline);
        if (notch === null) return;
        const { min, max } = bounds(outline);
        const x = notch.corner.endsWith('left') ? min.x : max.x - notch.width;
        const y = notch.corner.startsWith('bottom') ? min.y : max.y - notch.height;
        const within = pointsOn(outline, 40).filter(
          (point) =>
            point.x > x + 1e-9 &&
            point.x < x + notch.width - 1e-9 &&
            point.y > y + 1e-9 &&
            point.y < y + notch.height - 1e-9,
        );
        expect(within).toEqual([]);
        const middle = { x: x + notch.width / 2, y: y + notch.height / 2 };
        expect(isInside(middle, sampled(outline, 0.001))).toBe(false);
      }),
      { seed: 20_261_126, numRuns: 300 },
    );
  });
});
