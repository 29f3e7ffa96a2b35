import { describe, expect, test } from 'vitest';
import { budgetDrawer } from '../../core/fit/budget/budget-drawer.ts';
import { hangingWords } from '../../core/gap-view/hanging-words.ts';
import { hungBudget } from '../../core/gap-view/hung-budget.ts';
import { orderRework } from '../../core/gap-view/order-rework.ts';
import { startSettings } from '../../core/gap-view/start-settings.ts';
import type { HangingUse } from '../../core/jigs/sharing/hung-by.ts';
import { fitOf, present, standard, withAdjusters, withTolerances } from '../fit/budget/fits.ts';

const INCH = 25.4;

/** An inset front, 3/32 in all around, which starts low by as much. */
const INSET = { style: 'inset', openingW: 500, openingH: 200 };

const jigs = (side: number, bottom: number, edge: 'left' | 'right' = 'left'): readonly HangingUse[] => [
  { jigId: 'B1', edge: 'bottom', adjustment: bottom },
  { jigId: 'S1', edge, adjustment: side },
];

const budgetOf = (of = standard) =>
  present(budgetDrawer(fitOf(INSET, of), of, { samples: 0, seed: 0 }).value);

const settings = (uses: readonly HangingUse[]) =>
  startSettings(hungBudget(budgetOf(), standard, uses), standard, 'in');

describe('hungBudget', () => {
  test('is the budget itself where the jigs set what is wanted', () => {
    const budget = budgetOf();
    expect(hungBudget(budget, standard, jigs(0, 0))).toBe(budget);
  });

  // Worked by hand: wanted less got is -1/32 in at the left, so the front hangs 1/32 in too far left.
  test('moves the side adjuster the other way by what a shared jig is off', () => {
    const heights = ['Raise the left side by 3/32".', 'Raise the right side by 3/32".'];
    expect(settings(jigs(-INCH / 32, 0))).toEqual([...heights, 'Move the front to the right by 1/32".']);
    expect(settings(jigs(INCH / 32, 0))).toEqual([...heights, 'Move the front to the left by 1/32".']);
    expect(settings(jigs(-INCH / 32, 0, 'right'))).toEqual([
      ...heights,
      'Move the front to the left by 1/32".',
    ]);
  });

  // 3/32 in of start-low and 1/64 in of the jig are 7/64; with 1/64 in less overhang 5/64 are left to raise.
  test('adds what a shared bottom jig is off to the start-low allowance', () => {
    expect(settings(jigs(0, -INCH / 64))).toEqual([
      'Raise the left side by 7/64".',
      'Raise the right side by 7/64".',
    ]);
    expect(settings(jigs(0, INCH / 64))).toEqual([
      'Raise the left side by 5/64".',
      'Raise the right side by 5/64".',
    ]);
  });

  test('leaves the gaps that are aimed at as they are, and less to spare', () => {
    const own = budgetOf();
    const shared = hungBudget(own, standard, jigs(-0.6, -0.6));
    expect(shared.fit.gaps).toEqual(own.fit.gaps);
    for (const edge of ['left', 'bottom'] as const) {
      // The adjuster's reach is the same; more of it is asked for.
      expect(shared.edges[edge].available).toEqual(own.edges[edge].available);
      expect(shared.edges[edge].needed?.worst.most).toBeCloseTo(
        (own.edges[edge].needed?.worst.most ?? 0) + 0.6,
        2,
      );
    }
  });
});

describe('hangingWords', () => {
  test('says which jigs hang the front where, and nothing where they hang it right', () => {
    expect(hangingWords(jigs(0, 0), 'in')).toBeNull();
    expect(hangingWords(jigs(-INCH / 32, INCH / 64), 'in')).toBe(
      'Shared jigs (B1, S1) hang this front 1/64" higher and 1/32" further to the left than its own would; these settings put that right.',
    );
    expect(hangingWords(jigs(-0.5, 0, 'right'), 'mm')).toContain(
      'jigs (S1) hang this front 0.5 mm further to the right',
    );
  });
});

describe('orderRework with shared jigs', () => {
  test('counts more rework where a jig takes reach from an adjuster that is scarce', () => {
    const own = withAdjusters(withTolerances(standard, { opening: 1.8, slide: 1.5 }, 'normal'), {
      side: [-1, 1],
    });
    const budgets = { a: budgetOf(own) };
    const rework = (side: number) =>
      present(
        orderRework(
          budgets,
          own,
          jigs(side, 0).map((use) => ({ ...use, rowId: 'a' })),
        ),
      ).rework.expected;
    expect(rework(0)).toBe(present(orderRework(budgets, own)).rework.expected);
    expect(rework(-0.8)).toBeGreaterThan(rework(0));
  });
});
