import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { stabIntervals } from '../../core/jigs/cover/stab-intervals.ts';
import { byPartitions, fewestOf, leastUpTo, mostApart } from './brute-force.ts';
import { boxOfEdge, edges } from './cases.ts';
import { checkPlan } from './check-plan.ts';
import type { Need } from '../../core/jigs/cover/types.ts';

const ranged = (needs: readonly Need[]) => needs.map((need) => ({ ...need, ranges: [need] }));

const need = (id: string, lo: number, wanted: number, hi: number, weight = 1): Need => ({
  id,
  weight,
  interval: [lo, hi],
  wanted,
});

describe('stabIntervals', () => {
  test.prop([edges(16, 6, 6)], { numRuns: 3000 })(
    'has the count and the least adjustment of every sharing-out tried, for each number of jigs',
    (needs) => {
      const best = byPartitions(needs.map(boxOfEdge));
      const plan = stabIntervals(needs);
      checkPlan(plan, ranged(needs));
      expect(plan.count).toBe(fewestOf(best));
      expect(plan.count).toBe(mostApart(needs.map(boxOfEdge)));
      expect(plan.totalAdjustment).toBeCloseTo(best.get(plan.count) ?? Number.NaN, 6);
      for (let jigs = plan.count; jigs <= needs.length; jigs += 1) {
        const onCurve = plan.curve.findLast((point) => point.jigs <= jigs);
        expect(onCurve?.total).toBeCloseTo(leastUpTo(best, jigs), 6);
      }
    },
  );

  test.prop([edges(16, 5, 8)], { numRuns: 300 })(
    'never takes more jigs when every adjuster reaches further',
    (needs) => {
      const wider = needs.map((one) => ({
        ...one,
        interval: [one.interval[0] - 0.7, one.interval[1] + 0.4] as const,
      }));
      expect(stabIntervals(wider).count).toBeLessThanOrEqual(stabIntervals(needs).count);
    },
  );

  test.prop([edges(16, 6, 8), fc.constantFrom(0.5, 25.4 / 64, 1.7)], { numRuns: 500 })(
    'rounds what is shared to the step, without another jig and without leaving an interval, and nothing else',
    (needs, step) => {
      const exact = stabIntervals(needs);
      const plan = stabIntervals(needs, { step });
      checkPlan(plan, ranged(needs));
      expect(plan.count).toBe(exact.count);
      expect(plan.totalAdjustment - exact.totalAdjustment).toBeCloseTo(plan.roundingAdds, 5);
      const sites = plan.jigs.map(({ settings }) => settings[0]?.overhangs[0] ?? Number.NaN);
      expect(new Set(sites).size).toBe(sites.length);
      for (const { settings } of plan.jigs) {
        const [{ overhangs: [at = Number.NaN], serves } = { overhangs: [], serves: [] }] = settings;
        const members = needs.filter(({ id }) => serves.some((one) => one.id === id));
        const lo = Math.max(...members.map(({ interval }) => interval[0]));
        const hi = Math.min(...members.map(({ interval }) => interval[1]));
        const wanted = members.map((one) => Math.min(Math.max(one.wanted, one.interval[0]), one.interval[1]));
        if (new Set(wanted).size === 1) {
          expect(at).toBe(wanted[0]);
          continue;
        }
        const multiples = Array.from({ length: Math.ceil(24 / step) }, (_, times) => times * step).filter(
          (one) => one >= lo - 1e-9 && one <= hi + 1e-9,
        );
        const costOf = (site: number) =>
          members.reduce((sum, { weight }, i) => sum + weight * Math.abs(site - (wanted[i] ?? 0)), 0);
        const least = Math.min(...multiples.map(costOf));
        if (Math.abs(at / step - Math.round(at / step)) < 1e-5) {
          // The best of all multiples that serve these drawers, unless another jig has it.
          const better = multiples.filter((one) => costOf(one) < costOf(at) - 1e-5);
          expect(better.every((one) => sites.some((site) => Math.abs(site - one) < 1e-5))).toBe(true);
          if (better.length === 0) expect(costOf(at)).toBeCloseTo(least, 5);
        } else {
          // Not rounded: no multiple serves all of them but one that another jig has, before or after.
          const others = [...sites, ...exact.jigs.map(({ settings }) => settings[0]?.overhangs[0] ?? 0)];
          expect(multiples.every((one) => others.some((site) => Math.abs(site - one) < 1e-5))).toBe(true);
        }
      }
    },
  );

  test.prop([edges(16, 6, 8)], { numRuns: 200 })(
    'gives the same plan for the same needs, in any order',
    (needs) => {
      const sums = ({ count, totalAdjustment, curve }: ReturnType<typeof stabIntervals>) => [
        count,
        totalAdjustment,
        curve.map(({ jigs, total }) => [jigs, total]),
      ];
      expect(stabIntervals(needs)).toEqual(stabIntervals(needs));
      expect(sums(stabIntervals(needs.toReversed()))).toEqual(sums(stabIntervals(needs)));
    },
  );

  test('serves drawers of interleaved overhangs each by the jig it adjusts least to', () => {
    // The middle drawer has no adjuster, so that a jig lies between two drawers that share another.
    const plan = stabIntervals([need('a', 0, 4, 4), need('b', 5, 5, 5, 9), need('c', 0, 6, 6)]);
    expect(plan.count).toBe(2);
    expect(plan.jigs.map(({ settings }) => settings)).toEqual([
      [
        {
          overhangs: [4],
          serves: [{ id: 'a', adjustment: [0] }],
        },
      ],
      [
        {
          overhangs: [5],
          serves: [
            { id: 'b', adjustment: [0] },
            { id: 'c', adjustment: [1] },
          ],
        },
      ],
    ]);
  });

  test('lets intervals that touch but for float noise share a jig', () => {
    const plan = stabIntervals([
      need('a', 0, 0.1, 0.1 + 0.2),
      need('b', 0.3, 0.4, 0.5),
      need('c', 0.3, 0.3, 0.3),
    ]);
    expect(plan.count).toBe(1);
    // A millionth of a millimetre more than noise parts them.
    expect(stabIntervals([need('a', 0, 0, 0.3), need('b', 0.300002, 0.4, 0.5)]).count).toBe(2);
  });

  test('spends jigs that the shop is willing to make on less adjustment', () => {
    const needs = [need('a', 8, 10, 12), need('b', 9, 11, 13), need('c', 10, 12, 14)];
    const plan = stabIntervals(needs);
    expect(plan.curve).toEqual([
      { jigs: 1, total: 2, largest: 1 },
      { jigs: 2, total: 1, largest: 1 },
      { jigs: 3, total: 0, largest: 0 },
    ]);
    expect(stabIntervals(needs, { spend: 2 }).totalAdjustment).toBe(1);
    expect(stabIntervals(needs, { spend: 9 }).count).toBe(3);
  });

  // Worked by hand: 9.9 is nearer to 10 than to 9.5, and a's adjuster just reaches it.
  test('rounds an overhang that two share, and leaves one that a drawer has to itself', () => {
    const needs = [need('a', 9.4, 9.7, 10), need('b', 9.6, 9.9, 10.2, 2), need('c', 12.9, 13.2, 13.5)];
    const plan = stabIntervals(needs, { step: 0.5 });
    expect(plan.jigs.map(({ settings }) => settings[0]?.overhangs[0])).toEqual([10, 13.2]);
    expect(stabIntervals(needs).jigs.map(({ settings }) => settings[0]?.overhangs[0])).toEqual([9.9, 13.2]);
    // a is left with 0.3 in place of 0.2, both drawers of b with 0.1.
    expect(plan.roundingAdds).toBeCloseTo(0.3, 6);
    // Drawers of one overhang, however many, have their jig to themselves.
    const alike = [need('a', 9.4, 9.7, 10), need('b', 9.2, 9.7, 10.2)];
    expect(stabIntervals(alike, { step: 0.5 }).jigs[0]?.settings[0]?.overhangs).toEqual([9.7]);
  });

  test('weighs each line by its drawers', () => {
    expect(
      stabIntervals([need('a', 8, 10, 12), need('b', 9, 11, 13, 5)]).jigs[0]?.settings[0]?.overhangs,
    ).toEqual([11]);
  });

  test('is done with three hundred different lines within five seconds', () => {
    const needs = Array.from({ length: 300 }, (_, index) => {
      const wanted = 10 + ((index * 7919) % 3000) / 100;
      const reach = 0.4 + ((index * 104729) % 160) / 100;
      return need(`d${index}`, wanted - reach, wanted, wanted + reach);
    });
    const start = performance.now();
    const plan = stabIntervals(needs);
    expect(performance.now() - start).toBeLessThan(5000);
    checkPlan(plan, ranged(needs));
  });

  test('of no needs makes no jigs', () => {
    expect(stabIntervals([])).toEqual({
      jigs: [],
      count: 0,
      totalAdjustment: 0,
      largestAdjustment: 0,
      roundingAdds: 0,
      proof: 'optimal',
      curve: [{ jigs: 0, total: 0, largest: 0 }],
    });
  });

  test('refuses what is no need: where, what, and what would do', () => {
    expect(() => stabIntervals([need('a', 3, 2, 1)])).toThrow('need a: the interval 3 to 1 mm');
    expect(() => stabIntervals([need('a', 1, Number.NaN, 3)])).toThrow('must be finite');
    expect(() => stabIntervals([need('a', 1, 2, 3, 0)])).toThrow('need a: the weight 0');
    expect(() => stabIntervals([need('a', 1, 2, 3), need('a', 1, 2, 3)])).toThrow('two needs are called a');
    expect(() => stabIntervals([], { step: -1 })).toThrow('the step -1 mm');
  });
});
