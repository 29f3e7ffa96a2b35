import { describe, expect, test } from 'vitest';
import { coverCorners } from '../../core/jigs/cover/cover-corners.ts';
import { fewestPoints } from '../../core/jigs/cover/fewest-points.ts';
import { stabIntervals } from '../../core/jigs/cover/stab-intervals.ts';
import type { CornerNeed } from '../../core/jigs/cover/types.ts';
import { fewestByPoints, mostApart } from './brute-force.ts';
import { boxOfCorner } from './cases.ts';
import { solve } from './load-solver.ts';

/**
 * Points that meet closed intervals: the greedy by right end, and that it equals the most disjoint intervals, is
 * the textbook result (from memory); these answers were found by brute force.
 */
const STABBED = [
  {
    intervals: [
      [1, 4],
      [2, 6],
      [5, 7],
      [6, 8],
      [9, 10],
    ],
    fewest: 3,
    greedy: [4, 7, 10],
  },
  {
    intervals: [
      [0, 2],
      [2, 4],
      [4, 6],
    ],
    fewest: 2,
    greedy: [2, 6],
  },
  {
    intervals: [
      [0, 10],
      [1, 2],
      [3, 4],
      [5, 6],
    ],
    fewest: 3,
    greedy: [2, 4, 6],
  },
  {
    intervals: [
      [0, 1],
      [1, 2],
      [2, 3],
      [3, 4],
      [4, 5],
    ],
    fewest: 3,
    greedy: [1, 3, 5],
  },
  {
    intervals: [
      [0, 3],
      [1, 5],
      [2, 4],
      [6, 9],
      [7, 8],
      [8, 11],
      [10, 12],
    ],
    fewest: 3,
    greedy: [3, 8, 12],
  },
] as const;

describe('stabIntervals', () => {
  test.each(STABBED)('$intervals takes $fewest points', ({ intervals, fewest, greedy }) => {
    const spans = intervals.map(([lo, hi]) => ({ lo, hi }));
    const { points, apart } = fewestPoints(spans);
    expect(points).toEqual(greedy);
    expect(apart.length).toBe(fewest);
    const needs = intervals.map(([lo, hi], index) => ({
      id: `d${index}`,
      weight: 1,
      interval: [lo, hi] as const,
      wanted: (lo + hi) / 2,
    }));
    const plan = stabIntervals(needs);
    expect(plan.count).toBe(fewest);
    expect(plan.proof).toBe('optimal');
  });
});

/** x0, y0, x1, y1. Each meets the next and no other: two are disjoint at most, yet two points do not meet all. */
const CYCLE = {
  A: [0, 0, 6, 1],
  B: [5, 0, 6, 6],
  C: [3, 5, 6, 6],
  D: [0, 4, 3.5, 5.5],
  E: [0, 0, 1, 5],
} as const;

describe('coverCorners', () => {
  test('a cycle of five rectangles takes 3 fences though no 3 are disjoint', async () => {
    const needs = Object.entries(CYCLE).map(([id, [x0, y0, x1, y1]]): CornerNeed => ({
      id,
      weight: 1,
      bottom: { interval: [x0, x1], wanted: (x0 + x1) / 2 },
      side: { interval: [y0, y1], wanted: (y0 + y1) / 2 },
    }));
    const boxes = needs.map(boxOfCorner);
    const grid = Array.from({ length: 13 }, (_, x) =>
      Array.from({ length: 13 }, (_, y) => [x / 2, y / 2]),
    ).flat();
    expect(mostApart(boxes)).toBe(2);
    expect(fewestByPoints(boxes, grid)).toBe(3);
    const plan = await coverCorners(needs, solve);
    expect(plan.count).toBe(3);
    expect(plan.proof).toBe('optimal');
  });
});
