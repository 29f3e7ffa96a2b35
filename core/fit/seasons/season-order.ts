import type { Outcome } from '../../findings/finding.ts';
import type { ShopStandard } from '../../rules/types.ts';
import type { DrawerFit } from '../types.ts';
import { seasonDrawer } from './season-drawer.ts';
import type { SeasonBudget } from './types.ts';

/** How the fronts of an order move over the year; those of which it is not known are left out. */
export function seasonOrder(
  fits: readonly DrawerFit[],
  standard: ShopStandard,
  /** So that a caller can keep what is still the same. */
  seasonOne: typeof seasonDrawer = seasonDrawer,
): Outcome<readonly SeasonBudget[]> {
  const outcomes = fits.map((fit) => seasonOne(fit, standard));
  return {
    value: outcomes.flatMap(({ value }) => value ?? []),
    findings: outcomes.flatMap(({ findings }) => findings),
  };
}
