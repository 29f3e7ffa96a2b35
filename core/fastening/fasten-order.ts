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
  /** So that a caller can keep what is still the same. */
  fastenOne: (fit: DrawerFit, standard: ShopStandard) => Outcome<Fastening> = fastenAlike(),
): Outcome<readonly Fastening[]> {
  const outcomes = fits.map((fit) => fastenOne(fit, standard));
  return {
    value: outcomes.map(({ value }) => value),
    findings: outcomes.flatMap(({ findings }) => findings),
  };
}

/** Fastens drawers of one standard, those that are alike once. */
function fastenAlike(): (fit: DrawerFit, standard: ShopStandard) => Outcome<Fastening> {
  const solve = memoSolver();
  const known = new Map<string, Fastening>();
  return (fit, standard) => {
    const key = fasteningKey(fit);
    const alike = known.get(key) ?? fastenDrawer(fit, standard, solve).value;
    known.set(key, alike);
    return fastenedAs(alike, fit, standard);
  };
}

/** The fastening of a drawer that is fastened as another one. */
export function fastenedAs(alike: Fastening, fit: DrawerFit, standard: ShopStandard): Outcome<Fastening> {
  const value: Fastening = { ...alike, fit };
  return { value, findings: fasteningFindings(value, standard) };
}
