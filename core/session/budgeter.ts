import { budgetAlike } from '../fit/budget/budget-order.ts';
import { checkReach } from '../fit/budget/check-reach.ts';
import type { RegisteredSide } from '../fit/budget/start-move.ts';
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
    registeredOf: (fit: DrawerFit) => RegisteredSide,
  ) => Outcome<readonly AdjustmentBudget[]>;
  readonly endRound: () => void;
}

const QUICK = { samples: 0, seed: 0 } as const;

export function budgeter(): Budgeter {
  /** Of this round: a drawer that is kept asks for none. */
  let alike = budgetAlike(QUICK);
  const registeredOn = (registered: RegisteredSide) =>
    perDrawer((fit, standard): Outcome<AdjustmentBudget> => {
      const value = alike(fit, standard, { registered });
      return { value, findings: checkReach(value) };
    });
  const own = { left: registeredOn('left'), right: registeredOn('right') };
  return {
    budget(fits, standard, registeredOf) {
      const outcomes = fits.filter(canHang).map((fit) => own[registeredOf(fit)](fit, standard));
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
