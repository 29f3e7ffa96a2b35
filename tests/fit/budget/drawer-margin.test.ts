import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { drawerMargin } from '../../../core/fit/budget/drawer-margin.ts';
import { leastSlack } from '../../../core/fit/budget/least-slack.ts';
import { budgetModel } from '../../../core/fit/budget/model.ts';
import { boundGroups } from '../../../core/fit/budget/reach-lines.ts';
import { reaches } from '../../../core/fit/budget/reaches.ts';
import { stacker } from '../../../core/fit/budget/stack.ts';
import { tightSets } from '../../../core/fit/budget/tight-sets.ts';
import {
  anyDrawer,
  anyRanges,
  anyTolerances,
  fitOf,
  standard,
  withAdjusters,
  withTolerances,
} from './fits.ts';
import { MISHAPS } from './hang.ts';
import { bestSlack } from './linear-program.ts';

/** Each error as a share of its tolerance, and beyond it. */
const shares = fc.array(fc.double({ min: -2, max: 2, noNaN: true }), {
  minLength: MISHAPS.length,
  maxLength: MISHAPS.length,
});

const slackOf = (
  { constant, perError }: { readonly constant: number; readonly perError: readonly number[] },
  errors: readonly number[],
) => perError.reduce((sum, each, index) => sum + each * (errors[index] ?? 0), constant);

describe('tightSets', () => {
  test.prop([anyDrawer, anyTolerances, anyRanges, shares], { seed: 20_261_125, numRuns: 150 })(
    'the least slack of all sets is the best that the solver HiGHS finds',
    (given, values, ranges, of) => {
      const own = withAdjusters(withTolerances(standard, values), ranges);
      const model = budgetModel(fitOf(given, own), own, {});
      const sets = tightSets(boundGroups(model));
      if (sets.length === 0) return;
      const errors = model.errors.map(({ tolerance }, index) => tolerance.value * (of[index] ?? 0));
      const closed = Math.min(...sets.map((set) => slackOf(set, errors)));
      expect(closed).toBeCloseTo(bestSlack(model, errors), 6);
      // And the question of every Monte Carlo sample has the same answer.
      if (Math.abs(closed) > 1e-6)
        expect(reaches(boundGroups(model))(Float64Array.from(errors))).toBe(closed > 0);
    },
  );
});

describe('leastSlack', () => {
  test.prop([anyDrawer, anyTolerances, anyRanges, fc.double({ min: -3, max: 3, noNaN: true })], {
    seed: 20_261_128,
    numRuns: 150,
  })(
    'is the least of all sets worked out one by one, or the bound where that is less',
    (given, values, ranges, most) => {
      const own = withAdjusters(withTolerances(standard, values), ranges);
      const model = budgetModel(fitOf(given, own), own, {});
      const { likely } = stacker(model.errors.map(({ tolerance }) => tolerance));
      const slacks = tightSets(boundGroups(model)).map(
        ({ constant, perError }) => constant - likely(perError),
      );
      const least = Math.min(...slacks);
      if (slacks.length > 0) expect(leastSlack(model, Infinity)).toBeCloseTo(least, 9);
      expect(leastSlack(model, most)).toBeCloseTo(Math.min(most, least), 9);
    },
  );
});

describe('drawerMargin', () => {
  test.prop([anyDrawer, anyTolerances, anyRanges], { seed: 20_261_126, numRuns: 40 })(
    'worst: no corner of the tolerances leaves less slack, and one leaves as little',
    (given, values, ranges) => {
      const own = withAdjusters(withTolerances(standard, values), ranges);
      const model = budgetModel(fitOf(given, own), own, {});
      const margin = drawerMargin(model, 'mm');
      if (margin === null) return;
      const corner = (signs: readonly number[]) =>
        model.errors.map(({ tolerance }, index) => tolerance.value * (signs[index] ?? 0));
      const sets = tightSets(boundGroups(model));
      for (let bits = 0; bits < 2 ** MISHAPS.length; bits += 137) {
        const signs = MISHAPS.map((_, index) => ((bits >> index) & 1) * 2 - 1);
        const slack = Math.min(...sets.map((set) => slackOf(set, corner(signs))));
        expect(slack).toBeGreaterThanOrEqual(margin.worst.slack - 1e-9);
      }
      // The corner that the tightest set names, judged by HiGHS.
      const worst = sets.map((set) => set.perError.map((each) => -Math.sign(each)));
      const least = Math.min(
        ...worst
          .map((signs, index) => ({
            signs,
            slack: slackOf(sets[index] ?? { constant: 0, perError: [] }, corner(signs)),
          }))
          .toSorted((a, b) => a.slack - b.slack)
          .slice(0, 3)
          .map(({ signs }) => bestSlack(model, corner(signs))),
      );
      expect(margin.worst.slack).toBeCloseTo(least, 6);
    },
  );

  test.prop([anyDrawer, anyTolerances, anyRanges], { seed: 20_261_127, numRuns: 100 })(
    'nominal is what HiGHS finds without errors; likely lies between it and worst',
    (given, values, ranges) => {
      const own = withAdjusters(withTolerances(standard, values), ranges);
      const model = budgetModel(fitOf(given, own), own, {});
      const margin = drawerMargin(model, 'mm');
      if (margin === null) return;
      expect(margin.nominal.slack).toBeCloseTo(bestSlack(model, []), 6);
      expect(margin.likely.slack).toBeLessThanOrEqual(margin.nominal.slack + 1e-9);
      expect(margin.likely.slack).toBeGreaterThanOrEqual(margin.worst.slack - 1e-9);
    },
  );
});
