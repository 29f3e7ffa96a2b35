import type { DrawerFit } from '../../fit/types.ts';
import type { ShopStandard } from '../../rules/types.ts';
import type { CurvePoint, Proof } from '../cover/types.ts';
import type { Registration } from '../plan-types.ts';
import type { BuildContext } from '../types.ts';

/**
 * Whether drawers of different overhangs share jigs. `each`: every distinct overhang has its own jig. `fewest`:
 * as few jigs as the slides' adjusters allow. A number: so many jigs, for less adjusting; never fewer than it takes.
 */
export type JigSharing = 'each' | 'fewest' | number;

/** Where a jig is used: corner fences by their hand. */
export type SharedPlace = 'bottom' | 'side' | 'left corner' | 'right corner';

/** Overhangs (mm) that a jig sets at once, and for which drawers. */
export interface SharedSetting {
  /** One; of a corner fence bottom and side. */
  readonly overhangs: readonly number[];
  /** Places in the list of fits that the plan was made for. */
  readonly lines: readonly number[];
}

/** A jig of a shared plan; a block of two widths has two settings. */
export interface SharedJig {
  readonly place: SharedPlace;
  readonly settings: readonly SharedSetting[];
}

/** Which drawers of an order share jigs, and what that leaves to the adjusters. Plain data. */
export interface Sharing {
  /** Drawers that are in none of them keep their own overhang. */
  readonly jigs: readonly SharedJig[];
  readonly count: number;
  /** mm. Over all drawers and overhangs. */
  readonly totalAdjustment: number;
  /** mm. Of one drawer at one edge. */
  readonly largestAdjustment: number;
  /** mm. Overhangs that drawers of different ones share are multiples of it where that costs no jig; 0 for none. */
  readonly step: number;
  /** mm. How much of the total comes of that. */
  readonly roundingAdds: number;
  /** Of what was found before rounding. */
  readonly proof: Proof;
  /** Jigs against adjustment over the whole order, from the fewest jigs on, as far as it was worked out. */
  readonly curve: readonly CurvePoint[];
}

/** What sharing depends on. */
export interface SharingOf {
  readonly fits: readonly DrawerFit[];
  readonly standard: ShopStandard;
  readonly registration: Registration;
  readonly context: BuildContext;
}
