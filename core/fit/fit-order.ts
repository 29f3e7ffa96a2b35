import { groupBy } from '../collections/group-by.ts';
import type { Finding, Outcome } from '../findings/finding.ts';
import { cabinetKey, columnCounts } from '../order/cabinets.ts';
import type { Drawer, LengthUnit, Order } from '../order/types.ts';
import { resolveRules } from '../rules/resolve.ts';
import type { ShopStandard } from '../rules/types.ts';
import { checkStack } from './check-stack.ts';
import { checkNeighbors } from './check-neighbors.ts';
import { fitDrawer } from './fit-drawer.ts';
import { layOutCabinets } from './layout.ts';
import type { DrawerFit } from './types.ts';

/** The steps of `fitOrder`, so that a caller can keep what they gave for drawers that are still the same. */
export interface FitSteps {
  /** The fit of one drawer in a cabinet of so many columns; null when the standard lacks what it names. */
  readonly fitOne: (
    drawer: Drawer,
    standard: ShopStandard,
    columns: number,
    unit: LengthUnit,
  ) => Outcome<DrawerFit | null>;
  /** What the fits of one cabinet do to each other. */
  readonly checkCabinet: (fits: readonly DrawerFit[], smallestGap: number) => readonly Finding[];
}

export const PLAIN_FIT: FitSteps = {
  fitOne(drawer, standard, columns, unit) {
    const rules = resolveRules(drawer, standard, columns);
    if (rules.value === null) return { value: null, findings: rules.findings };
    const fit = fitDrawer(drawer, rules.value, standard, unit);
    return { value: fit.value, findings: [...rules.findings, ...fit.findings] };
  },
  checkCabinet: (fits, smallestGap) =>
    layOutCabinets(fits).flatMap((cabinet) => [
      ...checkStack(cabinet),
      ...checkNeighbors(cabinet, smallestGap),
    ]),
};

/** Fits every drawer of an order, and checks the fronts of each cabinet against each other. */
export function fitOrder(
  order: Order,
  standard: ShopStandard,
  { fitOne, checkCabinet }: FitSteps = PLAIN_FIT,
): Outcome<readonly DrawerFit[]> {
  const columns = columnCounts(order.drawers);
  const fits = order.drawers.map((drawer) =>
    fitOne(drawer, standard, columns.get(cabinetKey(drawer)) ?? 1, order.unit),
  );
  const value = fits.flatMap((fit) => fit.value ?? []);
  const smallestGap = standard.limits.smallestGap.value;
  const cabinets = groupBy(value, (fit) => cabinetKey(fit.drawer));
  const neighbors = [...cabinets.values()].flatMap((cabinet) => checkCabinet(cabinet, smallestGap));
  return { value, findings: [...fits.flatMap((fit) => fit.findings), ...neighbors] };
}
