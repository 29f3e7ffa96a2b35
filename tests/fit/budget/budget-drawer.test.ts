import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { budgetDrawer as budgetDrawerOrNot } from '../../../core/fit/budget/budget-drawer.ts';
import type { AdjustmentBudget, EdgeBudget } from '../../../core/fit/budget/types.ts';
import { EDGES } from '../../../core/order/types.ts';
import type { ToleranceSource } from '../../../core/rules/types.ts';
import {
  anyDrawer,
  anyRanges,
  anyTolerances,
  EXACT,
  fitOf,
  mirrored,
  MIRROR,
  present,
  standard,
  withAdjusters,
  withTolerances,
} from './fits.ts';
import { within } from './python.ts';

const budgetDrawer = (...of: Parameters<typeof budgetDrawerOrNot>) => {
  const { value, findings } = budgetDrawerOrNot(...of);
  return { value: present(value), findings };
};

const quick = { samples: 0, seed: 1 };

/** Every number of a budget that must not fall. */
const margins = ({ edges, margin }: AdjustmentBudget): readonly number[] => [
  ...EDGES.flatMap((edge) => [edges[edge].margin?.worst ?? 0, edges[edge].margin?.likely ?? 0]),
  margin?.nominal.slack ?? 0,
  margin?.worst.slack ?? 0,
  margin?.likely.slack ?? 0,
];

const noneLower = (before: readonly number[], after: readonly number[]) => {
  for (const [index, value] of before.entries()) expect(after[index]).toBeGreaterThanOrEqual(value - 1e-9);
};

/** A gap at the left only, to another front, so that no lean shows: the side adjuster alone rules it. */
const LEFT_ONLY = {
  openingW: 500,
  openingH: 150,
  edges: {
    left: { kind: 'share', member: 20, gap: 3 },
    right: { kind: 'lap', overlay: 10 },
    top: { kind: 'lap', overlay: 10 },
    bottom: { kind: 'lap', overlay: 10 },
  },
} as const;

describe('budgetDrawer', () => {
  test('of one gap: worst case, root sum square and reach are those worked by hand and with Python', () => {
    // The left gap moves with half of the opening and box errors, and with jig and slide in full; no turn.
    const own = withAdjusters(
      withTolerances(standard, { ...EXACT, opening: 1.2, box: 0.8, jig: 0.3 }, 'normal'),
      { side: [-0.4, 0.4] },
    );
    const { value } = budgetDrawer(fitOf(LEFT_ONLY, own), own, {
      samples: 200_000,
      seed: 5,
      gapTolerance: 0.3,
    });
    const { left } = value.edges;
    expect(left.spread.worst).toBeCloseTo(0.6 + 0.4 + 0.3, 9);
    const likely = Math.hypot(0.6, 0.4, 0.3);
    expect(left.spread.likely).toBeCloseTo(likely, 9);
    // 99.73 % of the samples: the standard error of that quantile is about 1 % here.
    expect(Math.abs((left.spread.simulated ?? 0) / likely - 1)).toBeLessThan(0.02);
    expect(left.limits).toEqual({ least: expect.closeTo(2.7, 9), most: expect.closeTo(3.3, 9) });
    expect(left.needed?.worst).toEqual({ least: expect.closeTo(-1, 9), most: expect.closeTo(1, 9) });
    expect(left.margin?.worst).toBeCloseTo(0.4 - 1, 9);
    expect(value.margin?.worst.slack).toBeCloseTo(0.4 + 0.3 - 1.3, 9);
    expect(value.reachableAtWorst).toBe(false);
    const shares = left.shares.map(({ source, share }) => [source, share]);
    expect(shares).toEqual([
      ['opening', expect.closeTo(0.36 / 0.61, 9)],
      ['box', expect.closeTo(0.16 / 0.61, 9)],
      ['jig', expect.closeTo(0.09 / 0.61, 9)],
    ]);
    // It comes in while the gap is off by no more than adjuster and limit together.
    const expected = within(0.7 / (likely / 3));
    const { share = 0, low = 0, high = 0 } = value.reach ?? {};
    expect(Math.abs(share - expected)).toBeLessThan(4 * Math.sqrt((expected * (1 - expected)) / 200_000));
    expect(low < share && share < high).toBe(true);
  });

  test('start: a front that starts low is raised by the start-low allowance on both sides', () => {
    const fit = fitOf({ style: 'inset' });
    const { value } = budgetDrawer(fit, standard, quick);
    // The shop standard's start-low allowance of inset fronts is 3/32 in.
    expect(value.start).toEqual({ side: 0, heightLeft: 2.38125, heightRight: 2.38125 });
    expect(value.edges.bottom.hung).toBeCloseTo(0, 9);
    expect(value.edges.top.hung).toBeCloseTo(2 * 2.38125, 9);
  });

  test('warns with numbers where the height adjuster cannot raise the front as far as it starts low', () => {
    const own = withAdjusters(standard, { height: [0, 0.5] });
    const { value, findings } = budgetDrawer(fitOf({ style: 'inset' }, own), own, quick);
    // Up by 0.5 of 2.38125 mm, and the gap may be half of what it should be.
    const short = 2.38125 - 0.5 - 2.38125 / 2;
    expect(value.margin?.nominal.slack).toBeCloseTo(-short, 9);
    expect(value.reachableLikely).toBe(false);
    expect(findings).toMatchObject([
      { code: 'fit/unreachable', severity: 'warning', values: { short: expect.closeTo(short, 9) } },
    ]);
    expect(findings[0]?.message).toContain('0.691 mm is missing between');
    expect(findings[0]?.message).toContain('height adjuster at its upper end');
  });

  test('warns with the source of most of the spread and the share to rework where tolerances are wide', () => {
    const own = withTolerances(standard, { ...EXACT, slide: 3 }, 'normal');
    const { findings, value } = budgetDrawer(fitOf({ style: 'inset' }, own), own, { samples: 4000, seed: 2 });
    expect(value.dominant).toEqual({ source: 'slide', share: 1 });
    expect(findings).toHaveLength(1);
    expect(findings[0]?.message).toMatch(/at three standard deviations .* \(100 %\) from the slide; \d/);
  });

  test('of normal errors: the interval of the simulated spread holds the root sum square in 95 of 100 runs or so', () => {
    const own = withTolerances(standard, { ...EXACT, opening: 1.2, box: 0.8, jig: 0.3 }, 'normal');
    const likely = Math.hypot(0.6, 0.4, 0.3);
    const holds = Array.from({ length: 100 }, (_, seed) => {
      const { value } = budgetDrawer(fitOf(LEFT_ONLY, own), own, { samples: 4000, seed });
      const within = value.edges.left.simulatedWithin;
      return within !== null && within.least <= likely && likely <= within.most;
    }).filter(Boolean).length;
    // Fewer than 87 of 100 would come up once in 1,500 times.
    expect(holds).toBeGreaterThanOrEqual(87);
    expect(holds).toBeLessThan(100);
  });

  test('has nothing to reach where a front shows no gap', () => {
    const lap = { kind: 'lap', overlay: 10 } as const;
    const fit = fitOf({ edges: { left: lap, right: lap, top: lap, bottom: lap } });
    const { value, findings } = budgetDrawer(fit, standard, { samples: 100, seed: 1 });
    expect(value.margin).toBeNull();
    expect(value.reach?.share).toBe(1);
    expect(value.edges.left.spread.worst).toBeGreaterThan(0);
    expect(findings).toEqual([]);
  });

  test('gives nothing for an opening that no box fits, whose fit says so already', () => {
    const { value, findings } = budgetDrawerOrNot(fitOf({ openingW: 5 }), standard, quick);
    expect([value, findings]).toEqual([null, []]);
  });

  test('is the same for the same seed, and draws nothing for 0 samples', () => {
    const fit = fitOf({ style: 'inset bevelled' });
    const drawn = (seed: number) => budgetDrawer(fit, standard, { samples: 3000, seed }).value;
    expect(drawn(1)).toEqual(drawn(1));
    expect(drawn(1).edges.left.spread.simulated).not.toBe(drawn(2).edges.left.spread.simulated);
    const none = budgetDrawer(fit, standard, quick).value;
    expect([none.reach, none.edges.left.spread.simulated]).toEqual([null, null]);
    expect(() => budgetDrawer(fit, standard, { samples: 1.5, seed: 1 })).toThrow(RangeError);
  });

  test.prop(
    [
      anyDrawer,
      anyTolerances,
      fc.constantFrom<ToleranceSource>('opening', 'box', 'front', 'jig', 'seating', 'slide'),
    ],
    { seed: 20_261_125, numRuns: 150 },
  )('a tighter tolerance never lowers a margin', (given, values, tightened) => {
    const [loose, tight] = [1, 0.6].map((part) => {
      const own = withTolerances(standard, { ...values, [tightened]: values[tightened] * part });
      return budgetDrawer(fitOf(given, own), own, quick).value;
    });
    if (loose === undefined || tight === undefined) throw new Error('no budget');
    noneLower(margins(loose), margins(tight));
  });

  test.prop([anyDrawer, anyTolerances, anyRanges, fc.constantFrom('height' as const, 'side' as const)], {
    seed: 20_261_126,
    numRuns: 60,
  })(
    'a wider adjuster never lowers a margin or the share that comes in',
    (given, values, ranges, widened) => {
      const [before, after] = [0, 0.5].map((more) => {
        const [least, most] = ranges[widened];
        const own = withAdjusters(withTolerances(standard, values), {
          ...ranges,
          [widened]: [least - more, most + more],
        });
        return budgetDrawer(fitOf(given, own), own, { samples: 300, seed: 3 }).value;
      });
      if (before === undefined || after === undefined) throw new Error('no budget');
      noneLower([...margins(before), before.reach?.share ?? 0], [...margins(after), after.reach?.share ?? 0]);
    },
  );

  test.prop([anyDrawer, anyTolerances, anyRanges], { seed: 20_261_127, numRuns: 150 })(
    'the budget of a drawer in a mirror is the mirrored budget',
    (given, values, ranges) => {
      const [least, most] = ranges.side;
      const tolerant = withTolerances(standard, values);
      const own = withAdjusters(tolerant, ranges);
      const turned = withAdjusters(tolerant, { ...ranges, side: [-most, -least] });
      const one = budgetDrawer(fitOf(given, own), own, { ...quick, registered: 'left' }).value;
      const other = budgetDrawer(fitOf(mirrored(given), turned), turned, {
        ...quick,
        registered: 'right',
      }).value;
      expect(other.start.side).toBeCloseTo(-one.start.side, 6);
      expect(other.margin?.worst.slack ?? 0).toBeCloseTo(one.margin?.worst.slack ?? 0, 6);
      expect(other.margin?.likely.slack ?? 0).toBeCloseTo(one.margin?.likely.slack ?? 0, 6);
      for (const edge of EDGES) {
        const numbers = ({ hung, spread, margin, shares }: EdgeBudget) => [
          hung ?? 0,
          spread.worst,
          spread.likely,
          margin?.worst ?? 0,
          margin?.likely ?? 0,
          shares[0]?.share ?? 0,
        ];
        const there = numbers(other.edges[MIRROR[edge]]);
        for (const [index, here] of numbers(one.edges[edge]).entries())
          expect(there[index], `${edge} ${index}`).toBeCloseTo(here, 6);
      }
    },
  );
});
