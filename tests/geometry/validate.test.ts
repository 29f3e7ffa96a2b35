import { describe, expect, test } from 'vitest';
import { circle } from '../../core/geometry/circle.ts';
import { rectangle } from '../../core/geometry/rectangle.ts';
import { roundedRectangle } from './rounded-rectangle.ts';
import type { RingContour, Vertex } from '../../core/geometry/types.ts';
import { contourProblems } from '../../core/geometry/validate.ts';

const ring = (...corners: readonly (readonly [number, number, number?])[]): RingContour => ({
  kind: 'ring',
  vertices: corners.map(([x, y, bulge = 0]): Vertex => ({ x, y, bulge })),
});

describe('contourProblems', () => {
  test('contourProblems(sound contours) is empty', () => {
    expect(contourProblems(rectangle(10, 5))).toEqual([]);
    expect(contourProblems(roundedRectangle(10, 5, 2.5))).toEqual([]);
    expect(contourProblems(circle({ x: 0, y: 0 }, 1))).toEqual([]);
    expect(contourProblems(ring([0, 0, 1], [10, 0, 1]))).toEqual([]);
  });

  test.each([
    ['a number that is not finite', ring([0, 0], [Number.NaN, 0], [0, 5]), /vertex 1 .* not finite/],
    ['an infinite bulge', ring([0, 0], [9, 0, Infinity], [0, 5]), /vertex 1 .* not finite/],
    ['a single vertex', ring([0, 0]), /needs 2 vertices/],
    ['a bulge beyond 1', ring([0, 0, 1.2], [10, 0], [5, 20]), /segment 0 turns more than half/],
    ['a short segment', ring([0, 0], [10, 0], [10, 0.0005], [0, 5]), /segment 1 is .* too short/],
    ['crossing sides', ring([0, 0], [10, 10], [10, 0], [0, 10]), /segments 0 and 2 meet at \(5, 5\)/],
    ['a corner on a side', ring([0, 0], [10, 0], [10, 10], [5, 0], [0, 10]), /meet at \(5, 0\)/],
    ['sides on each other', ring([0, 0], [10, 0], [10, 5], [8, 5], [8, 0], [0, -5]), /meet at \(8, 0\)/],
    ['a side that turns back', ring([0, 0], [10, 0], [4, 0], [4, 5]), /segments 0 and 1 meet at \(4, 0\)/],
    ['an arc through a side', ring([0, 0], [10, 0, 1], [10, 10], [6, 10], [6, -8]), /meet at/],
    [
      'an arc that touches a side',
      ring([0, 0], [20, 0], [20, 8], [15, 5, -1], [5, 5], [0, 8]),
      /meet at \(10, 0\)/,
    ],
    ['two arcs that cross', ring([0, 0, 1], [10, 0], [12, -1, -1], [4, -1]), /meet at/],
  ])('contourProblems(%s) names it', (_, contour, problem) => {
    expect(contourProblems(contour).join('; ')).toMatch(problem);
  });

  test('contourProblems(circle without size)', () => {
    expect(contourProblems({ kind: 'circle', center: { x: 0, y: 0 }, radius: 0 })).toHaveLength(1);
    expect(contourProblems({ kind: 'circle', center: { x: 0, y: 0 }, radius: Number.NaN })).toHaveLength(1);
  });

  test('contourProblems(path that crosses itself) is empty: letters do', () => {
    expect(contourProblems({ ...ring([0, 0], [10, 10], [10, 0], [0, 10]), kind: 'path' })).toEqual([]);
    expect(contourProblems({ kind: 'path', vertices: [] })).toHaveLength(1);
  });

  test('contourProblems(tangent arcs with coordinates rounded to 6 decimals) is empty', () => {
    const rounded = roundedRectangle(101.3, 47.9, 9.525).vertices.map(({ x, y, bulge }) => ({
      x: Math.round(x * 1e6 + 0.4) / 1e6,
      y: Math.round(y * 1e6 - 0.4) / 1e6,
      bulge: Math.round(bulge * 1e9) / 1e9,
    }));
    expect(contourProblems({ kind: 'ring', vertices: rounded })).toEqual([]);
  });
});
