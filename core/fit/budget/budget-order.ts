import type { Outcome } from '../../findings/finding.ts';
import type { ShopStandard } from '../../rules/types.ts';
import type { DrawerFit } from '../types.ts';
import { budgetOf } from './budget-drawer.ts';
import { canHang } from './can-hang.ts';
import { checkReach } from './check-reach.ts';
import { budgetModel } from './model.ts';
import type { RegisteredSide } from './start-move.ts';
import { expectedRework, type SampledGroup } from './rework.ts';
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
  const known = new Map<string, Omit<AdjustmentBudget, 'fit'>>();
  const groups = new Map<string, SampledGroup>();
  const drawers = fits.filter(canHang).map((fit): AdjustmentBudget => {
    const model = budgetModel(fit, standard, { ...options, registered: registeredOf(fit) });
    const key = JSON.stringify([fit.unit, model]);
    const budget = known.get(key) ?? budgetOf(model, fit.unit, options);
    known.set(key, budget);
    if (budget.reach !== null) {
      const fronts = (groups.get(key)?.fronts ?? 0) + fit.drawer.qty;
      groups.set(key, { fronts, reach: budget.reach });
    }
    return { fit, ...budget };
  });
  return {
    value: { drawers, rework: options.samples === 0 ? null : expectedRework([...groups.values()]) },
    findings: drawers.flatMap(checkReach),
  };
}
