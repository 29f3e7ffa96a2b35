import type { DrawerFit } from '../fit/types.ts';
import type { Edge } from '../order/types.ts';
import type { Sharing } from './sharing/types.ts';
import type { Jig, JigKind } from './types.ts';

/** What a shop sets its boxes against: an edge at a time, or a corner. */
export type Registration = 'edge' | 'corner';

/** One use of a jig: on this drawer, at this edge, for this overhang (mm). */
export interface JigUse {
  readonly fit: DrawerFit;
  readonly edge: Edge;
  readonly jig: Jig;
  readonly overhang: number;
  /** mm. What the adjusters are left with: the overhang wanted less the jig's; 0 where drawers share no jigs. */
  readonly adjustment: number;
}

export interface JigPlan {
  readonly jigs: readonly Jig[];
  readonly uses: readonly JigUse[];
  /** Present where drawers of different overhangs share jigs. */
  readonly sharing?: Sharing;
}

/** The kinds of jig that a plan is made of. */
export type PlanKinds = Readonly<
  Record<'bottomFence' | 'sideSpacer' | 'stepProfile' | 'cornerFence', JigKind>
>;
