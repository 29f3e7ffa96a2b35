import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { meetSegments } from '../../core/geometry/intersect.ts';
import { arc, type Segment } from '../../core/geometry/segments.ts';
import type { Point } from '../../core/geometry/types.ts';
import { missed, worstMiss } from './near.ts';

const line = (x1: number, y1: number, x2: number, y2: number): Segment => ({
  kind: 'line',
  start: { x: x1, y: y1 },
  end: { x: x2, y: y2 },
});
const full = (x: number, y: number, radius: number): readonly Segment[] => [
  arc({ x, y }, radius, 0, Math.PI),
  arc({ x, y }, radius, Math.PI, Math.PI),
];
const sorted = (points: readonly Point[]): readonly Point[] =>
  points.toSorted((a, b) => a.x - b.x || a.y - b.y);

describe('meetSegments', () => {
  test('meetSegments(crossing lines) is their crossing, of parallel or distant ones nothing', () => {
    expect(meetSegments(line(0, 0, 10, 0), line(5, -5, 5, 5))).toEqual([{ x: 5, y: 0 }]);
    expect(meetSegments(line(0, 0, 10, 0), line(0, 1, 10, 1))).toEqual([]);
    expect(meetSegments(line(0, 0, 10, 0), line(11, -5, 11, 5))).toEqual([]);
  });

  test('meetSegments(lines on each other) is the ends of what they share', () => {
    expect(sorted(meetSegments(line(0, 0, 10, 0), line(15, 0, 5, 0)))).toEqual([
      { x: 5, y: 0 },
      { x: 10, y: 0 },
    ]);
  });

  test('meetSegments(line, arc): two crossings of 3-4-5, one where it is tangent, none past it', () => {
    const upper = arc({ x: 0, y: 0 }, 5, 0, Math.PI);
    const cut = sorted(meetSegments(line(-9, 4, 9, 4), upper));
    expect(cut).toHaveLength(2);
    expect(
      worstMiss(
        cut.flatMap(({ x, y }) => [Math.abs(x) - 3, y - 4]),
        0,
        1e-12,
      ),
    ).toBeNull();
    expect(meetSegments(line(-9, 5, 9, 5), upper)).toHaveLength(1);
    expect(meetSegments(line(-9, 5.001, 9, 5.001), upper)).toEqual([]);
    expect(meetSegments(line(-9, -4, 9, -4), upper)).toEqual([]);
  });

  test('meetSegments(arc, arc): circles of 13 and 15 at distance 14 cross 12 off the line of centres', () => {
    // The 13-14-15 triangle has a height of 12 on its side of 14, 5 from the first corner.
    const found = meetSegments(arc({ x: 0, y: 0 }, 13, 0, Math.PI), arc({ x: 14, y: 0 }, 15, 0, Math.PI));
    expect(found).toHaveLength(1);
    expect(
      worstMiss(
        found.flatMap(({ x, y }) => [x - 5, y - 12]),
        0,
        1e-12,
      ),
    ).toBeNull();
  });

  test('meetSegments(arcs of one circle) is the ends of what they share', () => {
    const [a, b] = [arc({ x: 0, y: 0 }, 2, 0, 2), arc({ x: 0, y: 0 }, 2, 1, 2)];
    const shared = meetSegments(a, b);
    expect(shared).toHaveLength(2);
    const angles = shared.map(({ x, y }) => Math.atan2(y, x)).sort((p, q) => p - q);
    expect(missed(angles[0] ?? Number.NaN, 1, 1e-12)).toBeNull();
    expect(missed(angles[1] ?? Number.NaN, 2, 1e-12)).toBeNull();
  });

  test('meetSegments(whole circles): every point found lies on both, and none is missed', () => {
    const size = fc.double({ min: 0.5, max: 20, noNaN: true });
    fc.assert(
      fc.property(size, size, fc.double({ min: 0.1, max: 50, noNaN: true }), (r1, r2, apart) => {
        // Keep away from tangency, where the number of points hangs on the last digit.
        const margin = Math.min(Math.abs(apart - r1 - r2), Math.abs(Math.abs(r1 - r2) - apart));
        fc.pre(margin > 1e-3);
        const found = full(0, 0, r1).flatMap((a) => full(apart, 0, r2).flatMap((b) => meetSegments(a, b)));
        const crosses = apart < r1 + r2 && apart > Math.abs(r1 - r2);
        expect(found).toHaveLength(crosses ? 2 : 0);
        const misses = found.flatMap(({ x, y }) => [Math.hypot(x, y) - r1, Math.hypot(x - apart, y) - r2]);
        expect(worstMiss(misses, 0, 1e-9)).toBeNull();
      }),
      { seed: 20_260_207, numRuns: 1000 },
    );
  });
});
