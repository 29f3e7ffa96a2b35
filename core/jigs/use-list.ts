import type { DrawerFit } from '../fit/types.ts';
import type { Edge } from '../order/types.ts';
import type { JigUse } from './plan-types.ts';
import { adjustmentOf } from './sharing/shared-needs.ts';
import type { Jig } from './types.ts';

/** The uses of jigs in a plan, as they come up. */
export interface UseList {
  /** A drawer's edge is set by a jig for this overhang, mm. */
  readonly add: (fit: DrawerFit, edge: Edge, jig: Jig, overhang: number) => void;
  /** Those of these drawers, drawer by drawer. */
  readonly of: (fits: readonly DrawerFit[]) => readonly JigUse[];
}

/** The last uses of each drawer, so that a use stays the same object while it says the same. */
const kept = new WeakMap<DrawerFit, readonly JigUse[]>();

export function useList(): UseList {
  const uses = new Map<DrawerFit, JigUse[]>();
  return {
    add(fit, edge, jig, overhang) {
      const own = uses.get(fit) ?? [];
      if (own.length === 0) uses.set(fit, own);
      const before = kept.get(fit)?.[own.length];
      const isSame = before?.jig === jig && before.edge === edge && before.overhang === overhang;
      own.push(
        isSame
          ? before
          : { fit, edge, jig, overhang, adjustment: adjustmentOf(fit.overhang[edge], overhang) },
      );
    },
    of: (fits) =>
      fits.flatMap((fit) => {
        const own = uses.get(fit) ?? [];
        kept.set(fit, own);
        return own;
      }),
  };
}
