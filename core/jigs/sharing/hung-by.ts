import { groupBy } from '../../collections/group-by.ts';
import type { RegisteredSide } from '../../fit/budget/start-move.ts';
import type { DrawerFit } from '../../fit/types.ts';
import type { Edge } from '../../order/types.ts';
import type { JigUse } from '../plan-types.ts';
import type { Jig } from '../types.ts';
import { shiftFit, type Deviation } from './shift-fit.ts';

/** A jig's use on a drawer, as far as it settles how the front hangs. */
export interface HangingUse {
  readonly edge: Edge;
  readonly jigId: string;
  /** mm. The overhang wanted less the one got. */
  readonly adjustment: number;
}

/** A use as it is planned. */
type PlannedUse = Pick<JigUse, 'fit' | 'edge' | 'adjustment'> & { readonly jig: Pick<Jig, 'id'> };

/** How a drawer's jigs hang its front. */
export interface Hanging {
  /** The side that the box is set by. */
  readonly registered: RegisteredSide;
  /** How far the overhangs lie from those wanted. */
  readonly off: Deviation;
  /** Ids of the jigs that do it. */
  readonly jigIds: readonly string[];
}

/**
 * How the jigs of one drawer hang its front. Of two corner fences that are off the box is set by the one that
 * leaves less to adjust, the left one of equals: as they are shared apart, the other may not touch.
 */
export function hangingOf(uses: readonly HangingUse[]): Hanging {
  const jigs = [...groupBy(uses, ({ jigId }) => jigId).values()];
  const corners = jigs.filter((own) => own.length > 1);
  const isOff = corners.some((own) => adjusting(own) > 0);
  const [best] = corners.toSorted((a, b) => adjusting(a) - adjusting(b) || (sideOf(a) === 'left' ? -1 : 1));
  const setting = isOff && best !== undefined ? best : uses;
  const registered = sideOf(setting);
  const offAt = (edge: Edge): number => -(setting.find((use) => use.edge === edge)?.adjustment ?? 0) || 0;
  return {
    registered,
    off: { side: offAt(registered), bottom: offAt('bottom') },
    jigIds: [...new Set(setting.map(({ jigId }) => jigId))],
  };
}

/** The side that each drawer's box is set by, of all uses of an order; the left one where no jig does it. */
export function registeredSides(uses: readonly PlannedUse[]): (fit: DrawerFit) => RegisteredSide {
  // Where no jig is off and none is at the right there is no question.
  const open = new Set<DrawerFit>();
  for (const { fit, edge, adjustment } of uses) if (edge === 'right' || adjustment !== 0) open.add(fit);
  const sides = new Map(
    [
      ...groupBy(
        uses.filter(({ fit }) => open.has(fit)),
        ({ fit }) => fit,
      ),
    ].map(([fit, own]) => {
      // Only jigs that are off make it a long one.
      const isOff = own.some(({ adjustment }) => adjustment !== 0);
      const named = ({ edge, adjustment, jig }: PlannedUse): HangingUse => ({
        edge,
        adjustment,
        jigId: jig.id,
      });
      return [fit, isOff ? hangingOf(own.map(named)).registered : sideOf(own)];
    }),
  );
  return (fit) => sides.get(fit) ?? 'left';
}

/** The drawer as its jigs hang it, for its budget and for paper: the overhangs that they set. */
export function hungFit(fit: DrawerFit, { registered, off }: Hanging): DrawerFit {
  return off.side === 0 && off.bottom === 0 ? fit : shiftFit(fit, registered, off);
}

/** mm. How far the side adjuster must move the front to put the jig's overhang right; + is to the cabinet's right. */
export const sidewaysOf = ({ registered, off }: Hanging): number =>
  // More overhang on a side hangs the front further out there.
  (registered === 'left' ? off.side : -off.side) || 0;

/** mm in all. */
const adjusting = (uses: readonly HangingUse[]): number =>
  uses.reduce((sum, { adjustment }) => sum + Math.abs(adjustment), 0);

const sideOf = (uses: readonly Pick<HangingUse, 'edge'>[]): RegisteredSide =>
  uses.some(({ edge }) => edge === 'left') || !uses.some(({ edge }) => edge === 'right') ? 'left' : 'right';
