import { budgetOf } from '../fit/budget/budget-drawer.ts';
import { canHang } from '../fit/budget/can-hang.ts';
import { checkReach } from '../fit/budget/check-reach.ts';
import { budgetModel, type BudgetModel } from '../fit/budget/model.ts';
import type { AdjustmentBudget } from '../fit/budget/types.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Outcome } from '../findings/finding.ts';
import type { LengthUnit } from '../order/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { keyedMemo } from './keyed-memo.ts';

/** Budgets fronts, again and again, without samples: drawers that are alike, or still the same, not anew. */
export interface Budgeter {
  readonly budget: (
    fits: readonly DrawerFit[],
    standard: ShopStandard,
  ) => Outcome<readonly AdjustmentBudget[]>;
  readonly endRound: () => void;
}

const QUICK = { samples: 0, seed: 0 } as const;

export function budgeter(): Budgeter {
  const alike = keyedMemo<string, [BudgetModel, LengthUnit], ReturnType<typeof budgetOf>>(
    (model, unit) => budgetOf(model, unit, QUICK),
    // The key is the model.
    { same: () => true },
  );
  const own = keyedMemo<DrawerFit, [DrawerFit, ShopStandard], Outcome<AdjustmentBudget | null>>(
    (fit, standard) => {
      if (!canHang(fit)) return { value: null, findings: [] };
      const model = budgetModel(fit, standard, {});
      const value = { fit, ...alike.get(JSON.stringify([fit.unit, model]), model, fit.unit) };
      return { value, findings: checkReach(value) };
    },
  );
  return {
    budget(fits, standard) {
      const outcomes = fits.map((fit) => own.get(fit, fit, standard));
      return {
        value: outcomes.flatMap(({ value }) => value ?? []),
        findings: outcomes.flatMap(({ findings }) => findings),
      };
    },
    endRound() {
      // A drawer that is kept asks for no model, so models stay as long as the drawers do.
      own.endRound();
    },
  };
}
