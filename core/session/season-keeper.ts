import { seasonDrawer } from '../fit/seasons/season-drawer.ts';
import { seasonOrder } from '../fit/seasons/season-order.ts';
import type { SeasonBudget } from '../fit/seasons/types.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Outcome } from '../findings/finding.ts';
import type { ShopStandard } from '../rules/types.ts';
import { keyedMemo } from './keyed-memo.ts';

/** Follows fronts through the year, again and again: those that are still the same are kept. */
export interface SeasonKeeper {
  readonly follow: (fits: readonly DrawerFit[], standard: ShopStandard) => Outcome<readonly SeasonBudget[]>;
  readonly endRound: () => void;
}

export function seasonKeeper(): SeasonKeeper {
  const own = keyedMemo<DrawerFit, [DrawerFit, ShopStandard], ReturnType<typeof seasonDrawer>>(seasonDrawer);
  return {
    follow: (fits, standard) => seasonOrder(fits, standard, (fit) => own.get(fit, fit, standard)),
    endRound: own.endRound,
  };
}
