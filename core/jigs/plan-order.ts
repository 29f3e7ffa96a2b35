import type { Fastening } from '../fastening/types.ts';
import type { Outcome } from '../findings/finding.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { planAids } from './aids/plan-aids.ts';
import type { AidUse, PlanAidKinds } from './aids/plan-types.ts';
import type { JigPlan, PlanKinds, Registration } from './plan-types.ts';
import { planJigs } from './plan.ts';
import { shiftedScrews } from './shifted-screws.ts';
import type { Sharing } from './sharing/types.ts';
import type { BuildContext } from './types.ts';

/** All that a shop makes for an order: the jigs that set overhangs, then the aids to drilling. */
export interface OrderPlan extends JigPlan {
  readonly aids: readonly AidUse[];
}

/** What the plan of an order depends on. */
export interface PlanOf {
  readonly fits: readonly DrawerFit[];
  readonly fastenings: readonly Fastening[];
  readonly registration: Registration;
  readonly standard: ShopStandard;
  /** Made for these very fits; absent where each distinct overhang has a jig of its own. */
  readonly sharing?: Sharing | undefined;
}

/** The jigs of an order and its drill guides and pull templates; nothing that is alike is made twice. */
export function planOrder(
  { fits, fastenings, registration, standard, sharing }: PlanOf,
  context: BuildContext,
  /** So that a caller can keep what is still the same. */
  kinds?: { readonly jigs: PlanKinds; readonly aids: PlanAidKinds },
): Outcome<OrderPlan> {
  const jigs = planJigs(fits, registration, context, kinds?.jigs, sharing);
  const aids = planAids(fastenings, standard, context, kinds?.aids);
  return {
    value: {
      ...jigs.value,
      jigs: [...jigs.value.jigs, ...aids.value.jigs],
      aids: aids.value.uses,
    },
    findings: [...jigs.findings, ...shiftedScrews(jigs.value.uses, fastenings), ...aids.findings],
  };
}
