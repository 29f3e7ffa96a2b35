import { budgetDrawer } from '../fit/budget/budget-drawer.ts';
import type { AdjustmentBudget } from '../fit/budget/types.ts';
import { hangingOf, hungFit, type HangingUse } from '../jigs/sharing/hung-by.ts';
import type { ShopStandard } from '../rules/types.ts';

/**
 * The budget, without samples, of a drawer as its jigs hang it: set by their side, and with the overhangs of jigs
 * that are shared. Its start settings put right what the jigs leave.
 */
export function hungBudget(
  budget: AdjustmentBudget,
  standard: ShopStandard,
  uses: readonly HangingUse[],
): AdjustmentBudget {
  const hanging = hangingOf(uses);
  const { registered } = hanging;
  const fit = hungFit(budget.fit, hanging);
  if (fit === budget.fit && registered === budget.registered) return budget;
  return budgetDrawer(fit, standard, { samples: 0, seed: 0, registered }).value ?? budget;
}
