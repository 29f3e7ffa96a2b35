import { budgetOf } from '../fit/budget/budget-drawer.ts';
import { canHang } from '../fit/budget/can-hang.ts';
import { checkReach } from '../fit/budget/check-reach.ts';
import { budgetModel } from '../fit/budget/model.ts';
import type { AdjustmentBudget } from '../fit/budget/types.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Outcome } from '../findings/finding.ts';
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
  /** Of this round: a drawer that is kept asks for none. */
  const alike = new Map<string, ReturnType<typeof budgetOf>>();
  const own = keyedMemo<DrawerFit, [DrawerFit, ShopStandard], Outcome<AdjustmentBudget | null>>(
    (fit, standard) => {
      if (!canHang(fit)) return { value: null, findings: [] };
      const model = budgetModel(fit, standard, {});
      const key = JSON.stringify([fit.unit, model]);
      const budget = alike.get(key) ?? budgetOf(model, fit.unit, QUICK);
      alike.set(key, budget);
      const value = { fit, ...budget };
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
      own.endRound();
      alike.clear();
    },
  };
}
