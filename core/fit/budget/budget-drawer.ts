import type { Outcome } from '../../findings/finding.ts';
import type { LengthUnit } from '../../order/types.ts';
import type { ShopStandard } from '../../rules/types.ts';
import { seedOf } from '../../units/random.ts';
import type { DrawerFit } from '../types.ts';
import { canHang } from '../can-hang.ts';
import { checkReach } from './check-reach.ts';
import { drawerMargin } from './drawer-margin.ts';
import { edgeBudget } from './edge-budget.ts';
import { fallsShort } from './falls-short.ts';
import { budgetModel, type BudgetModel } from './model.ts';
import { shareInterval } from './share-interval.ts';
import { simulate } from './simulate.ts';
import type { AdjustmentBudget, BudgetOptions } from './types.ts';

/**
 * Whether a drawer's front will come into its gaps with the slide's adjusters alone: edge by edge, and all
 * gaps together with one setting of the side and the two height adjusters. Depth and tilt only make the
 * front flush and are left out. With `samples: 0` nothing is drawn, which is quick enough for every edit.
 * The value is null for a fit that has no box or no front.
 */
export function budgetDrawer(
  fit: DrawerFit,
  standard: ShopStandard,
  options: BudgetOptions,
): Outcome<AdjustmentBudget | null> {
  if (!canHang(fit)) return { value: null, findings: [] };
  const budget = { fit, ...budgetOf(budgetModel(fit, standard, options), fit.unit, options) };
  return { value: budget, findings: checkReach(budget) };
}

/** The budget of one model; drawers with equal models share it. */
export function budgetOf(
  model: BudgetModel,
  unit: LengthUnit,
  { samples, seed }: Pick<BudgetOptions, 'samples' | 'seed'>,
): Omit<AdjustmentBudget, 'fit'> {
  if (!Number.isInteger(samples) || samples < 0)
    throw new RangeError(`budgetOf: samples must be a whole number from 0: ${samples}`);
  const simulated = samples === 0 ? null : simulate(model, samples, ownSeed(model, seed));
  const margin = drawerMargin(model, unit);
  const within = (slack: number | undefined) => slack === undefined || !fallsShort(slack);
  return {
    edges: {
      left: edgeBudget('left', model, simulated),
      right: edgeBudget('right', model, simulated),
      top: edgeBudget('top', model, simulated),
      bottom: edgeBudget('bottom', model, simulated),
    },
    registered: model.registered,
    start: model.start,
    margin,
    reachableAtWorst: within(margin?.worst.slack),
    reachableLikely: within(margin?.likely.slack),
    dominant: margin?.likely.shares[0] ?? null,
    reach: simulated === null ? null : shareInterval(simulated.reached, samples),
  };
}

/**
 * Drawers of different sizes draw independent samples, as the interval of an order's rework needs. Tolerances
 * and adjusters stay out of it, so that a change of them is judged on the same samples.
 */
const ownSeed = ({ places }: BudgetModel, seed: number): number =>
  seedOf([seed, ...places.flatMap(({ hung, by }) => [hung, by.side, by.heightLeft, by.heightRight])]);
