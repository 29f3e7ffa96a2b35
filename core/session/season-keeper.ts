import { seasonDrawer } from '../fit/seasons/season-drawer.ts';
import { seasonOrder } from '../fit/seasons/season-order.ts';
import type { SeasonBudget } from '../fit/seasons/types.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Outcome } from '../findings/finding.ts';
import type { ShopStandard } from '../rules/types.ts';
import { perDrawer } from './per-drawer.ts';

/** Follows fronts through the year, again and again: those that are still the same are kept. */
export interface SeasonKeeper {
  readonly follow: (fits: readonly DrawerFit[], standard: ShopStandard) => Outcome<readonly SeasonBudget[]>;
}

export function seasonKeeper(): SeasonKeeper {
  const own = perDrawer(seasonDrawer);
  return { follow: (fits, standard) => seasonOrder(fits, standard, own) };
}
