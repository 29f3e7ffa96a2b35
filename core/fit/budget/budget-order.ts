import type { Outcome } from '../../findings/finding.ts';
import type { ShopStandard } from '../../rules/types.ts';
import { canHang } from '../can-hang.ts';
import type { DrawerFit } from '../types.ts';
import { budgetOf } from './budget-drawer.ts';
import { checkReach } from './check-reach.ts';
import { budgetModel } from './model.ts';
import type { RegisteredSide } from './start-move.ts';
import { expectedRework } from './rework.ts';
import type { SampledShare } from './share-interval.ts';
import type { AdjustmentBudget, BudgetOptions, OrderBudget } from './types.ts';

/**
 * The budgets of an order's drawers, those that are alike computed once, and the rework to expect. Fits that
 * have no box or no front are left out.
 */
export function budgetOrder(
  fits: readonly DrawerFit[],
  standard: ShopStandard,
  options: BudgetOptions,
  /** The side that each front is registered on, where they differ. */
  registeredOf: (fit: DrawerFit) => RegisteredSide = () => options.registered ?? 'left',
): Outcome<OrderBudget> {
  const budgetOne = budgetAlike(options);
  const drawers = fits
    .filter(canHang)
    .map((fit) => budgetOne(fit, standard, { ...options, registered: registeredOf(fit) }));
  // Drawers that are alike share the samples, which are counted once.
  const frontsOf = new Map<SampledShare, number>();
  for (const { fit, reach } of drawers) {
    if (reach !== null) frontsOf.set(reach, (frontsOf.get(reach) ?? 0) + fit.drawer.qty);
  }
  const groups = [...frontsOf].map(([reach, fronts]) => ({ fronts, reach }));
  return {
    value: { drawers, rework: options.samples === 0 ? null : expectedRework(groups) },
    findings: drawers.flatMap(checkReach),
  };
}

/** Budgets drawers that can hang, one after another: those that are alike get the very same budget. */
export function budgetAlike(
  sampling: Pick<BudgetOptions, 'samples' | 'seed'>,
): (
  fit: DrawerFit,
  standard: ShopStandard,
  options: Omit<BudgetOptions, 'samples' | 'seed'>,
) => AdjustmentBudget {
  const known = new Map<string, Omit<AdjustmentBudget, 'fit'>>();
  return (fit, standard, options) => {
    const model = budgetModel(fit, standard, options);
    const key = JSON.stringify([fit.unit, model]);
    const budget = known.get(key) ?? budgetOf(model, fit.unit, sampling);
    known.set(key, budget);
    return { fit, ...budget };
  };
}
