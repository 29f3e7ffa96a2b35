import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { budgetDrawer } from '../../core/fit/budget/budget-drawer.ts';
import { axisTicks } from '../../core/gap-view/axis-ticks.ts';
import { gapBars } from '../../core/gap-view/gap-bars.ts';
import type { GapBar } from '../../core/gap-view/types.ts';
import { EDGES, type Drawer } from '../../core/order/types.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import {
  anyDrawer,
  anyRanges,
  anyTolerances,
  fitOf,
  present,
  standard,
  withAdjusters,
  withTolerances,
} from '../fit/budget/fits.ts';
import { hang, NO_MISHAPS } from '../fit/budget/hang.ts';

const budgetOf = (given: Partial<Drawer>, of: ShopStandard) =>
  present(budgetDrawer(fitOf(given, of), of, { samples: 0, seed: 0 }).value);

/** mm of travel from one tried setting to the next. */
const STEP = 0.01;

/**
 * Travel left over above, and below, when the gap hangs off by `off` either way: every setting within 15 mm of
 * the target is tried, and those that bring the gap within its limits are kept.
 */
function marginByTrying({ edge, gap, limits, available, target }: GapBar, off: number): number {
  const opens = edge === 'left' || edge === 'bottom' ? 1 : -1;
  const settings = Array.from({ length: 3001 }, (_, index) => target + (index - 1500) * STEP);
  const good = [-off, off].map((error) =>
    settings.filter((setting) => {
      const then = gap + error + opens * (setting - target);
      return then >= limits.least && then <= limits.most;
    }),
  );
  const above = Math.min(...good.map((each) => available.most - Math.min(...each)));
  const below = Math.min(...good.map((each) => Math.max(...each) - available.least));
  return Math.min(above, below);
}

describe('gapBars', () => {
  test.prop([anyDrawer, anyTolerances, anyRanges], { seed: 20_261_125, numRuns: 100 })(
    'a front that hangs exactly as designed comes to the gaps that are aimed at when the adjusters stand at the targets',
    (given, tolerances, ranges) => {
      const own = withAdjusters(withTolerances(standard, tolerances), ranges);
      const budget = budgetOf(given, own);
      const { bars } = gapBars(budget, 'mm');
      const targetOf = (adjuster: GapBar['adjuster']) =>
        bars.find((bar) => bar.adjuster === adjuster)?.target ?? 0;
      const height = targetOf('height');
      const move = { side: targetOf('side'), heightLeft: height, heightRight: height };
      const measured = hang(budget.fit, NO_MISHAPS, move, 'left');
      for (const { edge, gap } of bars) {
        for (const [place, value] of measured) {
          if (!place.startsWith(edge)) continue;
          expect(value).toBeCloseTo(gap, 6);
        }
      }
    },
  );

  test.prop([anyDrawer, anyTolerances, anyRanges], { seed: 20_261_126, numRuns: 40 })(
    'the margin is the travel that is left over when every setting is tried',
    (given, tolerances, ranges) => {
      const own = withAdjusters(withTolerances(standard, tolerances), ranges);
      for (const bar of gapBars(budgetOf(given, own), 'mm').bars) {
        for (const way of ['worst', 'likely'] as const) {
          const off = bar.spread[way].most - bar.target;
          expect(Math.abs(bar.margin[way] - marginByTrying(bar, off))).toBeLessThan(2 * STEP);
        }
      }
    },
  );

  test.prop([anyDrawer, anyTolerances], { seed: 20_261_127, numRuns: 100 })(
    'every edge has a bar or laps, all that is drawn lies on the axis, and 0 does',
    (given, tolerances) => {
      const { bars, laps, axis } = gapBars(budgetOf(given, withTolerances(standard, tolerances)), 'in');
      expect([...bars.map(({ edge }) => edge), ...laps].toSorted()).toEqual(EDGES.toSorted());
      for (const { available, spread, needed, target } of bars) {
        for (const span of [available, spread.worst, spread.likely, needed.worst, needed.likely]) {
          expect(span.least).toBeLessThanOrEqual(span.most);
          expect(span.least).toBeGreaterThan(axis.least);
          expect(span.most).toBeLessThan(axis.most);
        }
        expect(spread.worst.most).toBeGreaterThanOrEqual(spread.likely.most - 1e-9);
        expect(target).toBeGreaterThan(axis.least);
      }
      expect(axis.least).toBeLessThan(0);
    },
  );

  it('an inset front starts low, so its height adjusters stand above 0 and its side adjuster at 0', () => {
    const { bars } = gapBars(budgetOf({ style: 'inset' }, standard), 'in');
    const startLow = fitOf({ style: 'inset' }).rules.startLow.value;
    expect(startLow).toBeGreaterThan(0);
    expect(bars.map(({ edge, target }) => [edge, target])).toEqual([
      ['left', 0],
      ['right', 0],
      ['top', startLow],
      ['bottom', startLow],
    ]);
  });

  it('a reach is free where the limits are wider apart than the gap can stray', () => {
    const exact = withTolerances(standard, { opening: 0, box: 0, front: 0, jig: 0, seating: 0, slide: 0.1 });
    for (const { needed, limits, gap, target } of gapBars(budgetOf({ style: 'inset' }, exact), 'in').bars) {
      expect(needed.worst.free).toBe(true);
      expect(needed.worst.least).toBeLessThan(target);
      expect(needed.worst.most).toBeGreaterThan(target);
      expect(needed.worst.most - needed.worst.least).toBeLessThan(limits.most - limits.least);
      expect(gap).toBeGreaterThan(0);
    }
  });
});

describe('axisTicks', () => {
  it('marks steps that a rule has, from 0 both ways', () => {
    expect(axisTicks({ least: -1.7, most: 3.2 }, 'mm').map(({ words }) => words)).toEqual([
      '−1 mm',
      '0',
      '+1 mm',
      '+2 mm',
      '+3 mm',
    ]);
    expect(axisTicks({ least: -1.7, most: 4.2 }, 'in').map(({ words }) => words)).toEqual([
      '−1/16"',
      '0',
      '+1/16"',
      '+1/8"',
    ]);
  });

  test.prop(
    [
      fc.double({ min: -40, max: -0.01, noNaN: true }),
      fc.double({ min: 0.01, max: 40, noNaN: true }),
      fc.constantFrom('in' as const, 'mm' as const),
    ],
    { seed: 20_261_128 },
  )(
    'are on the axis, never more than fit beside each other, and never only one or two on a long one',
    (least, most, unit) => {
      const ticks = axisTicks({ least, most }, unit);
      expect(ticks.length).toBeLessThanOrEqual(7);
      if (most - least > 2) expect(ticks.length).toBeGreaterThanOrEqual(2);
      for (const { at } of ticks) {
        expect(at).toBeGreaterThanOrEqual(least - 1e-5);
        expect(at).toBeLessThanOrEqual(most + 1e-5);
      }
      expect(ticks.map(({ words }) => words)).toContain('0');
    },
  );
});
