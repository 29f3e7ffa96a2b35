import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { coverCorners } from '../../core/jigs/cover/cover-corners.ts';
import { stabIntervals } from '../../core/jigs/cover/stab-intervals.ts';
import type { CornerNeed, CoverSolver } from '../../core/jigs/cover/types.ts';
import { byPartitions, fewestOf, leastUpTo } from './brute-force.ts';
import { boxOfCorner, corners, edges } from './cases.ts';
import { checkPlan } from './check-plan.ts';
import { countedSolver, noSolver, solve } from './load-solver.ts';

const ranged = (needs: readonly CornerNeed[]) =>
  needs.map((need) => ({ ...need, ranges: [need.bottom, need.side] }));

const corner = (id: string, bottom: number, side: number, reach: number, weight = 1): CornerNeed => ({
  id,
  weight,
  bottom: { interval: [bottom - reach, bottom + reach], wanted: bottom },
  side: { interval: [side - reach, side + reach], wanted: side },
});

describe('coverCorners', () => {
  test.prop([corners(9, 6, 6)], { numRuns: 300 })(
    'has the count and the least adjustment of every sharing-out tried',
    async (needs) => {
      const best = byPartitions(needs.map(boxOfCorner));
      const plan = await coverCorners(needs, solve);
      checkPlan(plan, ranged(needs));
      expect(plan.count).toBe(fewestOf(best));
      expect(plan.totalAdjustment).toBeCloseTo(best.get(plan.count) ?? Number.NaN, 6);
      expect(plan.proof).toBe('optimal');
    },
  );

  test.prop([corners(9, 6, 6)], { numRuns: 60 })(
    'has the least adjustment of every sharing-out for each number of jigs on the curve',
    async (needs) => {
      const best = byPartitions(needs.map(boxOfCorner));
      const plan = await coverCorners(needs, solve, { curve: true });
      for (let jigs = plan.count; jigs <= needs.length; jigs += 1) {
        const onCurve = plan.curve.findLast((point) => point.jigs <= jigs);
        expect(onCurve?.total).toBeCloseTo(leastUpTo(best, jigs), 6);
      }
      const spent = await coverCorners(needs, solve, { spend: plan.count + 1 });
      expect(spent.totalAdjustment).toBeCloseTo(leastUpTo(best, plan.count + 1), 6);
      expect(spent.proof).toBe('optimal');
    },
  );

  test.prop([edges(12, 5, 7)], { numRuns: 60 })(
    'with the same bottom everywhere takes as many jigs as the sides alone',
    async (needs) => {
      const sides = needs.map(({ id, weight, ...side }) => ({ id, weight, bottom: SAME, side }));
      const plan = await coverCorners(sides, solve);
      const alone = stabIntervals(needs);
      expect(plan.count).toBe(alone.count);
      expect(plan.totalAdjustment).toBeCloseTo(alone.totalAdjustment, 6);
    },
  );

  test.prop([corners(9, 4, 7), fc.constantFrom(0.5, 25.4 / 64)], { numRuns: 60 })(
    'never takes more jigs when every adjuster reaches further, nor when overhangs are rounded',
    async (needs, step) => {
      const widen = ({ interval: [lo, hi], wanted }: CornerNeed['side']) =>
        ({ interval: [lo - 0.7, hi + 0.4], wanted }) as const;
      const wider = needs.map((need) => ({ ...need, bottom: widen(need.bottom), side: widen(need.side) }));
      const plan = await coverCorners(needs, solve);
      const rounded = await coverCorners(needs, solve, { step });
      expect((await coverCorners(wider, solve)).count).toBeLessThanOrEqual(plan.count);
      expect(rounded.count).toBeLessThanOrEqual(plan.count);
      checkPlan(rounded, ranged(needs));
    },
  );

  test('does not call the solver where one fence serves all that overlap', async () => {
    const needs = [
      corner('a', 10, 10, 1),
      corner('b', 11, 10, 1, 3),
      corner('c', 30, 10, 1),
      corner('d', 30, 40, 0),
    ];
    const plan = await coverCorners(needs, noSolver);
    expect(plan.jigs.map(({ settings }) => settings[0]?.overhangs)).toEqual([
      [11, 10],
      [30, 10],
      [30, 40],
    ]);
    expect(plan.jigs[0]?.settings[0]?.serves).toEqual([
      { id: 'a', adjustment: [-1, 0] },
      { id: 'b', adjustment: [0, 0] },
    ]);
    expect(plan.proof).toBe('optimal');
  });

  test('of no needs makes no jigs', async () => {
    expect((await coverCorners([], noSolver)).count).toBe(0);
  });

  /** Overhangs of many kinds of cabinet, close enough that their rectangles chain. */
  const many = (count: number): readonly CornerNeed[] =>
    Array.from({ length: count }, (_, index) =>
      corner(`d${index}`, 10 + ((index * 37) % 80) / 8, 12 + ((index * 53) % 70) / 7, 1.1, 1 + (index % 3)),
    );

  test('gives the same plan each time', async () => {
    const needs = many(14);
    expect(await coverCorners(needs, solve)).toEqual(await coverCorners(needs, solve));
  });

  test('proves the plan of thirty different corners within ten seconds', async () => {
    const needs = many(30);
    const { solve, calls } = countedSolver();
    const start = performance.now();
    const plan = await coverCorners(needs, solve);
    expect(performance.now() - start).toBeLessThan(10_000);
    expect(plan.proof).toBe('optimal');
    expect(calls()).toBeGreaterThan(0);
    checkPlan(plan, ranged(needs));
  });

  test('cut short, gives a plan that serves all, and a bound that is true', async () => {
    const needs = many(30);
    const best = await coverCorners(needs, solve);
    const idle: CoverSolver = () => ({ status: 'limit', bound: -Infinity, valueOf: null });
    for (const short of [await coverCorners(needs, idle), await coverCorners(needs, solve, { seconds: 0 })]) {
      checkPlan(short, ranged(needs));
      expect(short.proof).not.toBe('optimal');
      if (short.proof === 'optimal') continue;
      expect(short.proof.bound.jigs).toBeLessThanOrEqual(best.count);
      expect(short.count).toBeGreaterThanOrEqual(best.count);
      if (short.count === best.count)
        expect(short.proof.bound.total).toBeLessThanOrEqual(best.totalAdjustment);
    }
  });

  test('passes the limits on to the solver', async () => {
    const seen: unknown[] = [];
    const watch: CoverSolver = (lp, limits) => {
      seen.push({ seconds: limits.seconds, nodes: limits.nodes });
      return solve(lp, limits);
    };
    await coverCorners(many(14), watch, { seconds: 20, nodes: 5000 });
    expect(new Set(seen.map((limits) => JSON.stringify(limits)))).toEqual(
      new Set([JSON.stringify({ seconds: 20, nodes: 5000 })]),
    );
  });
});

const SAME = { interval: [9, 11], wanted: 10 } as const;
