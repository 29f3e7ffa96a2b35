import type { Outcome } from '../findings/finding.ts';
import type { DrawerFit } from '../fit/types.ts';
import { bottomFence } from './kinds/bottom-fence.ts';
import { cornerFence } from './kinds/corner-fence.ts';
import { sideSpacer } from './kinds/side-spacer.ts';
import { stepProfile } from './kinds/step-profile.ts';
import { planCornerJigs } from './plan-corner-jigs.ts';
import { planEdgeJigs } from './plan-edge-jigs.ts';
import type { JigPlan, PlanKinds, Registration } from './plan-types.ts';
import type { BuildContext } from './types.ts';

export const PLAN_KINDS: PlanKinds = { bottomFence, sideSpacer, stepProfile, cornerFence };

/**
 * The jigs that set every front of an order: distinct overhangs become distinct jigs, the same one is made
 * once. With corners, drawers that no corner fence can serve get edge jigs.
 */
export function planJigs(
  fits: readonly DrawerFit[],
  registration: Registration,
  context: BuildContext,
  /** So that a caller can keep the jigs of set-ups that are still the same. */
  kinds: PlanKinds = PLAN_KINDS,
): Outcome<JigPlan> {
  const corners =
    registration === 'corner' ? planCornerJigs(fits, context, kinds) : { jigs: [], uses: [], left: fits };
  const edges = planEdgeJigs(corners.left, context, kinds);
  const place = new Map(fits.map((fit, index) => [fit, index]));
  const uses = [...corners.uses, ...edges.uses].toSorted(
    (a, b) => (place.get(a.fit) ?? 0) - (place.get(b.fit) ?? 0),
  );
  return { value: { jigs: [...corners.jigs, ...edges.jigs], uses }, findings: edges.findings };
}
