import type { Finding, Outcome } from '../findings/finding.ts';
import { cabinetKey, columnCounts } from '../order/cabinets.ts';
import type { Order } from '../order/types.ts';
import { resolveRules } from '../rules/resolve.ts';
import type { ShopStandard } from '../rules/types.ts';
import { checkNeighbors } from './check-neighbors.ts';
import { fitDrawer } from './fit-drawer.ts';
import { layOutCabinets } from './layout.ts';
import type { DrawerFit } from './types.ts';

/** Fits every drawer of an order, and checks the fronts of each cabinet against each other. */
export function fitOrder(order: Order, standard: ShopStandard): Outcome<readonly DrawerFit[]> {
  const columns = columnCounts(order.drawers);
  const fits: DrawerFit[] = [];
  const findings: Finding[] = [];
  for (const drawer of order.drawers) {
    const rules = resolveRules(drawer, standard, columns.get(cabinetKey(drawer)) ?? 1);
    findings.push(...rules.findings);
    if (rules.value === null) continue;
    const fit = fitDrawer(drawer, rules.value, standard);
    fits.push(fit.value);
    findings.push(...fit.findings);
  }
  for (const cabinet of layOutCabinets(fits)) {
    findings.push(...checkNeighbors(cabinet, standard.limits.smallestGap.value));
  }
  return { value: fits, findings };
}
