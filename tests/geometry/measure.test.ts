import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { circle } from '../../core/geometry/circle.ts';
import { contains } from '../../core/geometry/contains.ts';
import { distanceToContour } from '../../core/geometry/distance.ts';
import { bounds, perimeter, signedArea } from '../../core/geometry/measure.ts';
import { rectangle } from '../../core/geometry/rectangle.ts';
import { roundedRectangle } from './rounded-rectangle.ts';
import type { RingContour } from '../../core/geometry/types.ts';
import { contourProblems } from '../../core/geometry/validate.ts';
import { missed, worstMiss } from './near.ts';
import { plate, plateRecipes } from './plates.ts';
import { distanceToSides, isInside, pointsOn, sampled, shoelace } from './reference.ts';

const SEED = 20_260_204;
const ringThrough = (corners: readonly (readonly [number, number])[]): RingContour => ({
  kind: 'ring',
  vertices: corners.map(([x, y]) => ({ x, y, bulge: 0 })),
});
const plates = plateRecipes.map(plate).filter((ring) => contourProblems(ring).length === 0);

describe('signedArea', () => {
  // The usual textbook figures for the shoelace formula; the last is half of 3 x 4.
  test.each([
    [
      [
        [1, 6],
        [3, 1],
        [7, 2],
        [4, 4],
        [8, 5],
      ] as const,
      16.5,
    ],
    [
      [
        [3, 4],
        [5, 11],
        [12, 8],
        [9, 5],
        [5, 6],
      ] as const,
      -30,
    ],
    [
      [
        [0, 0],
        [4, 0],
        [0, 3],
      ] as const,
      6,
    ],
  ])('signedArea(polygon %#) is the shoelace value', (corners, area) => {
    expect(signedArea(ringThrough(corners))).toBe(area);
  });

  test('signedArea and perimeter(rounded rectangle) are the closed formulas', () => {
    const ring = roundedRectangle(100, 40, 5);
    // Four square corners of r² less a quarter disc each.
    expect(missed(signedArea(ring), 4000 - (4 - Math.PI) * 25, 1e-9, 'area')).toBeNull();
    expect(missed(perimeter(ring), 2 * (90 + 30) + 10 * Math.PI, 1e-9, 'perimeter')).toBeNull();
  });

  test('signedArea(circle) is pi r²', () => {
    expect(missed(signedArea(circle({ x: 7, y: 7 }, 2)), 4 * Math.PI, 1e-12)).toBeNull();
  });

  test('signedArea keeps its digits far from the origin', () => {
    expect(missed(signedArea(rectangle(0.5, 0.25, { x: 1e6, y: -1e6 })), 0.125, 1e-9)).toBeNull();
  });

  test('signedArea, perimeter and bounds(random plates) agree with fine chords', () => {
    fc.assert(
      fc.property(plates, (ring) => {
        const chords = sampled(ring, 1e-5);
        const around = chords.reduce((total, { x, y }, index) => {
          const next = chords[(index + 1) % chords.length] ?? { x, y };
          return total + Math.hypot(next.x - x, next.y - y);
        }, 0);
        expect(missed(signedArea(ring), shoelace(chords), 1e-5 * around, 'area')).toBeNull();
        expect(missed(perimeter(ring), around, 1e-3, 'perimeter')).toBeNull();
        const [xs, ys] = [chords.map(({ x }) => x), chords.map(({ y }) => y)];
        const { min, max } = bounds(ring);
        const off = [
          min.x - Math.min(...xs),
          min.y - Math.min(...ys),
          max.x - Math.max(...xs),
          max.y - Math.max(...ys),
        ];
        expect(worstMiss(off, 0, 2e-5, 'bounds')).toBeNull();
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});

describe('bounds', () => {
  test('bounds(half circle) reaches its top, not just its ends', () => {
    const half: RingContour = {
      kind: 'ring',
      vertices: [
        { x: 10, y: 0, bulge: 1 },
        { x: -10, y: 0, bulge: 0 },
      ],
    };
    const { min, max } = bounds(half);
    expect(worstMiss([min.x + 10, min.y, max.x - 10, max.y - 10], 0, 1e-12)).toBeNull();
  });

  test('bounds(several) holds them all, bounds() is a programmer error', () => {
    expect(bounds(rectangle(10, 5), circle({ x: 20, y: 0 }, 2)).max).toEqual({ x: 22, y: 5 });
    expect(() => bounds()).toThrow(RangeError);
  });
});

describe('distanceToContour and contains', () => {
  test('distanceToContour(points of a grid, random plates) agrees with fine chords', () => {
    fc.assert(
      fc.property(
        plates,
        fc.double({ min: -0.2, max: 1.2, noNaN: true }),
        fc.double({ min: -0.2, max: 1.2, noNaN: true }),
        (ring, u, v) => {
          const { min, max } = bounds(ring);
          const point = { x: min.x + u * (max.x - min.x), y: min.y + v * (max.y - min.y) };
          const chords = sampled(ring, 1e-5);
          const away = distanceToSides(point, chords);
          expect(missed(distanceToContour(point, ring), away, 2e-5, 'distance')).toBeNull();
          fc.pre(away > 1e-4);
          expect(contains(ring, point)).toBe(isInside(point, chords));
        },
      ),
      { seed: SEED, numRuns: 1000 },
    );
  });

  test('distanceToContour(a point on it) is 0', () => {
    const ring = roundedRectangle(30, 20, 6);
    expect(
      worstMiss(
        pointsOn(ring, 7).map((point) => distanceToContour(point, ring)),
        0,
        1e-12,
      ),
    ).toBeNull();
    expect(distanceToContour({ x: 3, y: 4 }, circle({ x: 0, y: 0 }, 2))).toBe(3);
  });
});
