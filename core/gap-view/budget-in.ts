import { budgetDrawer } from '../fit/budget/budget-drawer.ts';
import type { AdjustmentBudget } from '../fit/budget/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import type { LengthUnit } from '../units/unit.ts';

/** A budget, without samples, whose words name lengths in another unit. */
export function budgetIn(
  budget: AdjustmentBudget,
  standard: ShopStandard,
  unit: LengthUnit,
): AdjustmentBudget {
  const { fit, registered } = budget;
  if (fit.unit === unit) return budget;
  return budgetDrawer({ ...fit, unit }, standard, { samples: 0, seed: 0, registered }).value ?? budget;
}
