import { test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { coverBlocks } from '../../core/jigs/cover/cover-blocks.ts';
import { stabIntervals } from '../../core/jigs/cover/stab-intervals.ts';
import type { SideNeed } from '../../core/jigs/cover/types.ts';
import { byBlocks, fewestOf, leastUpTo } from './brute-force.ts';
import { boxOfEdge, sides } from './cases.ts';
import { checkPlan } from './check-plan.ts';
import { noSolver, solve } from './load-solver.ts';

/** As of a side spacer: widths must differ clearly. */
const RULE = { canPair: (a: number, b: number) => Math.abs(a - b) >= 3, apart: 3 };

const ranged = (needs: readonly SideNeed[]) => needs.map((need) => ({ ...need, ranges: [need] }));

const side = (id: string, lo: number, wanted: number, hi: number): SideNeed => ({
  id,
  weight: 1,
  interval: [lo, hi],
  wanted,
});

const MOST = 4;

describe('coverBlocks', () => {
  test.prop([sides(10, 5, 4)], { numRuns: 100 })(
    'has the count and the least adjustment of every choice and pairing of widths tried',
    async (needs) => {
      const boxes = needs.map((need) => ({ ...boxOfEdge(need), alone: need.alone === true }));
      const best = byBlocks(boxes, RULE.canPair, MOST);
      const plan = await coverBlocks(needs, RULE, solve, { curve: true });
      checkPlan(plan, ranged(needs));
      expect(plan.count).toBe(fewestOf(best));
      for (const point of plan.curve.filter(({ jigs }) => jigs < MOST)) {
        // Two widths just 3 mm apart are made a nanometre more, lest float noise refuse them.
        expect(Math.abs(point.total - leastUpTo(best, point.jigs))).toBeLessThan(1e-4);
      }
      for (const { settings } of plan.jigs) {
        const [wide, narrow] = settings.map(({ overhangs: [at = Number.NaN] }) => at);
        if (wide === undefined || narrow === undefined) continue;
        expect(wide - narrow).toBeGreaterThanOrEqual(3);
        const paired = new Set(settings.flatMap(({ serves }) => serves.map(({ id }) => id)));
        expect(needs.filter(({ id, alone }) => alone === true && paired.has(id))).toEqual([]);
      }
    },
  );

  test('pairs the fewest widths where that is best, without the solver', async () => {
    const plan = await coverBlocks(
      [side('a', 9, 10, 11), side('b', 19, 20, 21), side('c', 29, 30, 31)],
      RULE,
      noSolver,
    );
    expect(plan.jigs.map(({ settings }) => settings.map(({ overhangs }) => overhangs[0]))).toEqual([
      [20],
      [30, 10],
    ]);
    expect(plan.proof).toBe('optimal');
  });

  test('uses a width that is left over for less adjustment', async () => {
    // One width would do; the block's other width costs no block.
    const needs = [side('a', 6, 10, 14), side('b', 10, 14, 18)];
    expect(stabIntervals(needs).count).toBe(1);
    const plan = await coverBlocks(needs, RULE, noSolver);
    expect([plan.count, plan.totalAdjustment]).toEqual([1, 0]);
  });

  test('moves widths apart where the fewest would lie too near each other to pair', async () => {
    const needs = [side('a', 8, 10, 10), side('b', 12, 12, 14)];
    const plan = await coverBlocks(needs, RULE, solve);
    expect(plan.count).toBe(1);
    expect(plan.totalAdjustment).toBeCloseTo(1, 5);
    expect(plan.proof).toBe('optimal');
  });

  test('keeps a drawer that no block of two widths serves on a block of its own', async () => {
    const needs = [{ ...side('a', 10, 10, 10), alone: true }, side('b', 20, 20, 20), side('c', 30, 30, 30)];
    const plan = await coverBlocks(needs, RULE, solve);
    expect(
      plan.jigs.map(({ settings }) => settings.flatMap(({ serves }) => serves.map(({ id }) => id))),
    ).toEqual([['a'], ['c', 'b']]);
  });

  test('rounds to the step only to widths that still pair', async () => {
    // Two drawers to each width, so that both are shared.
    const needs = [
      side('a', 9.8, 10.2, 10.4),
      side('A', 9.9, 10.1, 10.2),
      side('b', 13.3, 13.3, 13.6),
      side('B', 13.3, 13.4, 13.6),
    ];
    const rule = { canPair: (a: number, b: number) => Math.abs(a - b) >= 3.05, apart: 3.05 };
    const plan = await coverBlocks(needs, rule, solve, { step: 0.5 });
    expect(plan.jigs.map(({ settings }) => settings.map(({ overhangs }) => overhangs[0]))).toEqual([
      [13.5, 10],
    ]);
    const tight = { canPair: (a: number, b: number) => Math.abs(a - b) <= 3.2, apart: 0 };
    const held = await coverBlocks(needs, tight, solve, { step: 0.5 });
    expect(held.count).toBe(1);
    for (const { settings } of held.jigs) {
      const [wide = 0, narrow = 0] = settings.map(({ overhangs: [at = Number.NaN] }) => at);
      expect(wide - narrow).toBeLessThanOrEqual(3.2);
    }
  });

  test('pairs a large order by the solver where a simple pairing does not do', async () => {
    // Widths of 4 mm steps, of which only neighbours pair, except across a hole in the middle.
    const needs = Array.from({ length: 21 }, (_, index) =>
      side(`d${index}`, 10 + 4 * index, 10 + 4 * index, 10 + 4 * index),
    );
    const rule = { canPair: (a: number, b: number) => Math.abs(a - b) >= 3 && Math.abs(a - b) < 5, apart: 3 };
    const plan = await coverBlocks(needs, rule, solve);
    expect(plan.count).toBe(11);
    expect(plan.proof).toBe('optimal');
  });

  test('of no needs makes no blocks', async () => {
    expect((await coverBlocks([], RULE, noSolver)).count).toBe(0);
  });
});
