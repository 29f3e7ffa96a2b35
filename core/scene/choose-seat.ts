import type { DrawerFit } from '../fit/types.ts';
import type { Jig, Seat } from '../jigs/types.ts';
import type { Edge } from '../order/types.ts';
import { SAME_OVERHANG, sameLength } from '../units/tolerances.ts';

/** What one setting of a seat does on a drawer. */
export interface EdgeSet {
  readonly edge: Edge;
  /** mm, as the jig sets it. */
  readonly overhang: number;
}

/** A seat of a jig on one drawer. */
export interface ChosenSeat {
  readonly seat: Seat;
  /** One for each of the seat's settings. */
  readonly sets: readonly [EdgeSet, ...EdgeSet[]];
}

/** An edge at which a jig is used: for its drawer's own overhang, or for that of the jig where drawers share it. */
export type SeatUse = Edge | EdgeSet;

const useOf =
  (fit: DrawerFit) =>
  (use: SeatUse): EdgeSet =>
    typeof use === 'string' ? { edge: use, overhang: fit.overhang[use] } : use;

/**
 * The seat by which a jig is used on a drawer: each of its settings takes one of the edges in use and sets
 * the overhang of that use. Null when the jig has no such seat.
 */
export function chooseSeat(jig: Jig, fit: DrawerFit, uses: readonly SeatUse[]): ChosenSeat | null {
  for (const seat of jig.seats) {
    const [first, ...others] = seat.sets.flatMap((set): readonly EdgeSet[] => {
      const used = uses
        .map(useOf(fit))
        .find(
          ({ edge, overhang }) =>
            set.edges.includes(edge) &&
            set.backBevel === fit.rules.backBevel.value &&
            sameLength(set.overhang, overhang, SAME_OVERHANG),
        );
      return used === undefined ? [] : [{ edge: used.edge, overhang: set.overhang }];
    });
    if (first !== undefined && others.length === seat.sets.length - 1) {
      return { seat, sets: [first, ...others] };
    }
  }
  return null;
}
