import type { Outcome } from '../findings/finding.ts';
import type { DrawerFit } from '../fit/types.ts';
import { planCornerJigs } from './plan-corner-jigs.ts';
import { planEdgeJigs } from './plan-edge-jigs.ts';
import { PLAN_KINDS } from './plan-kinds.ts';
import type { JigPlan, PlanKinds, Registration } from './plan-types.ts';
import { sharedNeeds } from './sharing/shared-needs.ts';
import type { Sharing } from './sharing/types.ts';
import type { BuildContext } from './types.ts';
import { useList } from './use-list.ts';

/**
 * The jigs that set every front of an order: distinct overhangs become distinct jigs, the same one is made
 * once. With corners, drawers that no corner fence can serve get edge jigs. With `sharing`, which must have been
 * made for these very fits, jigs set the overhangs that drawers share.
 */
export function planJigs(
  fits: readonly DrawerFit[],
  registration: Registration,
  context: BuildContext,
  /** So that a caller can keep the jigs of set-ups that are still the same. */
  kinds: PlanKinds = PLAN_KINDS,
  sharing?: Sharing,
): Outcome<JigPlan> {
  const shared = sharedNeeds(sharing, fits);
  const uses = useList();
  const corners =
    registration === 'corner' ? planCornerJigs(fits, context, kinds, shared, uses) : { jigs: [], left: fits };
  const edges = planEdgeJigs(corners.left, context, kinds, shared, uses);
  return {
    value: {
      jigs: [...corners.jigs, ...edges.jigs],
      uses: uses.of(fits),
      ...(sharing === undefined ? {} : { sharing }),
    },
    findings: edges.findings,
  };
}
