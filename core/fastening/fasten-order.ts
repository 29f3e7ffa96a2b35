import type { Outcome } from '../findings/finding.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { fastenDrawer } from './fasten-drawer.ts';
import { fasteningFindings } from './fastening-findings.ts';
import { fasteningKey } from './fastening-key.ts';
import { memoSolver } from './solver.ts';
import type { Fastening } from './types.ts';

/** Fastens every front of an order; drawers that are alike are solved once. */
export function fastenOrder(
  fits: readonly DrawerFit[],
  standard: ShopStandard,
): Outcome<readonly Fastening[]> {
  const solve = memoSolver();
  const known = new Map<string, Fastening>();
  const value = fits.map((fit): Fastening => {
    const key = fasteningKey(fit);
    const found = known.get(key);
    if (found !== undefined) return { ...found, fit };
    const fastening = fastenDrawer(fit, standard, solve).value;
    known.set(key, fastening);
    return fastening;
  });
  return { value, findings: value.flatMap((fastening) => fasteningFindings(fastening, standard)) };
}
