import { describe, expect, test } from 'vitest';
import { budgetDrawer } from '../../../core/fit/budget/budget-drawer.ts';
import { budgetOrder } from '../../../core/fit/budget/budget-order.ts';
import { fitOf, standard, withTolerances } from './fits.ts';

const own = withTolerances(standard, { opening: 1.8, slide: 1.5 }, 'normal');
const options = { samples: 4000, seed: 11 };
const insets = [
  fitOf({ style: 'inset', qty: 3, drawer: 'a' }, own),
  fitOf({ style: 'inset bevelled', qty: 2, drawer: 'b' }, own),
  fitOf({ style: 'inset', qty: 4, drawer: 'c' }, own),
];

describe('budgetOrder', () => {
  const { value, findings } = budgetOrder(insets, own, options);

  test('gives every drawer the budget that it has alone, in the order of the fits', () => {
    for (const [index, fit] of insets.entries())
      expect(value.drawers[index]).toEqual(budgetDrawer(fit, own, options).value);
  });

  test('shares the budget of drawers that are alike', () => {
    expect(value.drawers[2]?.edges).toBe(value.drawers[0]?.edges);
    expect(value.drawers[1]?.edges).not.toBe(value.drawers[0]?.edges);
  });

  test('expects to rework each front with the share that does not come in', () => {
    const missing = value.drawers.map(({ fit, reach }) => fit.drawer.qty * (1 - (reach?.share ?? 1)));
    const { rework } = value;
    expect(rework?.fronts).toBe(9);
    expect(rework?.expected).toBeCloseTo(
      missing.reduce((sum, each) => sum + each, 0),
      9,
    );
    expect(rework?.expected).toBeGreaterThan(0.1);
    expect(rework?.low).toBeLessThan(rework?.expected ?? 0);
    expect(rework?.high).toBeGreaterThan(rework?.expected ?? 0);
    // Far more samples land inside the interval; a seed that does not is 1 in 20.
    const many = budgetOrder(insets, own, { samples: 60_000, seed: 12 }).value.rework?.expected ?? 0;
    expect(many).toBeGreaterThan(rework?.low ?? 0);
    expect(many).toBeLessThan(rework?.high ?? 0);
  });

  test('warns of each drawer by its own name', () => {
    expect(findings.map(({ code, at }) => [code, at.drawer])).toEqual([
      ['fit/unreachable', 'B1 / a'],
      ['fit/unreachable', 'B1 / b'],
      ['fit/unreachable', 'B1 / c'],
    ]);
  });

  test('leaves out what has no box', () => {
    const { drawers } = budgetOrder([fitOf({ openingW: 5 }, own), ...insets], own, options).value;
    expect(drawers.map(({ fit }) => fit)).toEqual(insets);
  });

  test('expects nothing where no samples are drawn', () => {
    expect(budgetOrder(insets, own, { samples: 0, seed: 1 }).value.rework).toBeNull();
    expect(budgetOrder([], own, options).value).toEqual({
      drawers: [],
      rework: { fronts: 0, expected: 0, low: 0, high: 0 },
    });
  });
});
