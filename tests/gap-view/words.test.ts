import { describe, expect, it } from 'vitest';
import { budgetDrawer } from '../../core/fit/budget/budget-drawer.ts';
import { budgetOrder } from '../../core/fit/budget/budget-order.ts';
import { budgetIn } from '../../core/gap-view/budget-in.ts';
import { orderRework, REWORK_SAMPLES } from '../../core/gap-view/order-rework.ts';
import { reachWords } from '../../core/gap-view/reach-words.ts';
import { reachShareWords, reworkWords } from '../../core/gap-view/rework-words.ts';
import { startSettings } from '../../core/gap-view/start-settings.ts';
import type { Drawer } from '../../core/order/types.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { EXACT, fitOf, present, standard, withAdjusters, withTolerances } from '../fit/budget/fits.ts';

const budgetOf = (given: Partial<Drawer>, of: ShopStandard) =>
  present(budgetDrawer(fitOf(given, of), of, { samples: 0, seed: 0 }).value);

/** An inset front, 3/32 in (2.38125 mm) all around, low by as much. */
const INSET = { style: 'inset', openingW: 500, openingH: 200 };

describe('reachWords', () => {
  const verdict = (own: ShopStandard, given: Partial<Drawer> = INSET) =>
    reachWords(budgetOf(given, own), 'mm').verdict;

  it('tells worst case from likely, unlikely, and what does not come in even when made to size', () => {
    expect(verdict(withTolerances(standard, EXACT))).toBe('worst');
    expect(verdict(withTolerances(standard, { opening: 1.1 }))).toBe('likely');
    expect(verdict(withTolerances(standard, { opening: 4, slide: 3 }))).toBe('unlikely');
    expect(verdict(withAdjusters(standard, { height: [0, 0.5] }))).toBe('never');
  });

  it('says what is missing in the unit that is shown', () => {
    // Of 2.38125 mm start-low only 0.5 are there, and the gap may be 2.38125 / 2 off: 0.690625 are missing.
    const budget = budgetOf(INSET, withAdjusters(standard, { height: [0, 0.5] }));
    expect(reachWords(budget, 'mm').words).toBe(
      'Does not come in with the adjusters alone, even when everything is made to size: 0.691 mm is missing.',
    );
    expect(reachWords(budget, 'in').words).toContain('0.0272" is missing');
  });

  it('says that a front without gaps has nothing to bring in', () => {
    const lap = { kind: 'lap', overlay: 12 } as const;
    const laps = { edges: { left: lap, right: lap, top: lap, bottom: lap } };
    expect(verdict(standard, laps)).toBe('no gap');
  });
});

describe('budgetIn', () => {
  it('changes the words alone', () => {
    const budget = budgetOf(INSET, standard);
    const inches = budgetIn(budget, standard, 'in');
    expect(budgetIn(budget, standard, 'mm')).toBe(budget);
    expect(budget.margin?.worst.limits.join(' ')).toContain('mm');
    expect(inches.margin?.worst.limits.join(' ')).not.toContain('mm');
    expect(inches.margin?.worst.slack).toBe(budget.margin?.worst.slack);
    expect(inches.edges).toEqual(budget.edges);
  });
});

describe('startSettings', () => {
  it('are told in the steps of the adjusters, heights first', () => {
    const own = withAdjusters(standard, { height: [0, 3] }, { mm: 0.5, name: 'click' });
    // 2.38125 mm of start-low are nearest to 5 clicks of 0.5 mm.
    expect(startSettings(budgetOf(INSET, own), own, 'mm')).toEqual([
      'Raise the left side by 2.5 mm: 5 clicks.',
      'Raise the right side by 2.5 mm: 5 clicks.',
    ]);
  });

  it('say so when an adjuster does not go that far', () => {
    const own = withAdjusters(standard, { height: [0, 2] });
    expect(startSettings(budgetOf(INSET, own), own, 'mm')[0]).toBe(
      'Raise the left side by 2.38 mm. The adjuster does not go that far.',
    );
  });
});

describe('orderRework', () => {
  const own = withTolerances(standard, { opening: 1.8, slide: 1.5 }, 'normal');
  const budgets = {
    a: budgetOf({ ...INSET, qty: 3 }, own),
    b: budgetOf({ ...INSET, openingH: 120, qty: 2 }, own),
    c: budgetOf({ ...INSET, qty: 4 }, own),
  };

  it('counts what the order comes to, and gives each row its share', () => {
    const counted = present(orderRework(budgets, own));
    const order = budgetOrder(
      Object.values(budgets).map(({ fit }) => fit),
      own,
      REWORK_SAMPLES,
    ).value;
    expect(counted.rework).toEqual(order.rework);
    expect(counted.rework.fronts).toBe(9);
    expect(counted.reach).toEqual({
      a: order.drawers[0]?.reach,
      b: order.drawers[1]?.reach,
      c: order.drawers[2]?.reach,
    });
    expect(counted.reach['a']?.samples).toBe(2000);
    const missing = Object.entries(budgets).reduce(
      (sum, [row, { fit }]) => sum + fit.drawer.qty * (1 - (counted.reach[row]?.share ?? NaN)),
      0,
    );
    expect(counted.rework.expected).toBeCloseTo(missing, 9);
    expect(missing).toBeGreaterThan(0.1);
  });

  it('gives the same every time, and nothing for an order without fronts', () => {
    expect(orderRework(budgets, own)).toEqual(orderRework(budgets, own));
    expect(orderRework({}, own)).toBeNull();
  });
});

describe('reworkWords', () => {
  it('rounds the interval outwards, so that it never claims too much', () => {
    expect(reworkWords({ fronts: 51, expected: 0.1, low: 0.02, high: 0.31 })).toBe(
      'Of 51 fronts, 0.1 are expected to need rework (0.0 to 0.4).',
    );
    expect(reworkWords({ fronts: 20, expected: 0, low: 0, high: 0.011 })).toContain('(0.0 to 0.1)');
    expect(reworkWords({ fronts: 9, expected: 2, low: 1.3, high: 2.7 })).toContain('(1.3 to 2.7)');
    expect(reachShareWords({ share: 1, low: 0.998_08, high: 1, samples: 2000 })).toBe(
      '100.0 % of fronts like this one come in (99.8 to 100.0 %).',
    );
  });
});
