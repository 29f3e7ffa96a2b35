import { budgetAlike } from '../fit/budget/budget-order.ts';
import { checkReach } from '../fit/budget/check-reach.ts';
import type { AdjustmentBudget } from '../fit/budget/types.ts';
import { canHang } from '../fit/can-hang.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Outcome } from '../findings/finding.ts';
import type { ShopStandard } from '../rules/types.ts';
import { perDrawer } from './per-drawer.ts';

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
  let alike = budgetAlike(QUICK);
  const own = perDrawer((fit, standard): Outcome<AdjustmentBudget> => {
    const value = alike(fit, standard, {});
    return { value, findings: checkReach(value) };
  });
  return {
    budget(fits, standard) {
      const outcomes = fits.filter(canHang).map((fit) => own(fit, standard));
      return {
        value: outcomes.map(({ value }) => value),
        findings: outcomes.flatMap(({ findings }) => findings),
      };
    },
    endRound() {
      alike = budgetAlike(QUICK);
    },
  };
}
