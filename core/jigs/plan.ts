import type { Outcome } from '../findings/finding.ts';
import type { DrawerFit } from '../fit/types.ts';
import { planCornerJigs } from './plan-corner-jigs.ts';
import { planEdgeJigs } from './plan-edge-jigs.ts';
import type { JigPlan, Registration } from './plan-types.ts';
import type { BuildContext } from './types.ts';

/**
 * The jigs that set every front of an order: distinct overhangs become distinct jigs, the same one is made
 * once. With corners, drawers that no corner fence can serve get edge jigs.
 */
export function planJigs(
  fits: readonly DrawerFit[],
  registration: Registration,
  context: BuildContext,
): Outcome<JigPlan> {
  const corners =
    registration === 'corner' ? planCornerJigs(fits, context) : { jigs: [], uses: [], left: fits };
  const edges = planEdgeJigs(corners.left, context);
  const place = new Map(fits.map((fit, index) => [fit, index]));
  const uses = [...corners.uses, ...edges.uses].toSorted(
    (a, b) => (place.get(a.fit) ?? 0) - (place.get(b.fit) ?? 0),
  );
  return { value: { jigs: [...corners.jigs, ...edges.jigs], uses }, findings: edges.findings };
}
