import type { Point } from '../geometry/types.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { HolePlan, StockScrew } from '../rules/fastening-types.ts';

/**
 * Back view, as everywhere: x to the right, y up, z out of the back of the front; origin at the lower left
 * corner of the face outline. The cabinet's left is at x = front width. z is 0 at the back of the front, the
 * front's wood is below it, the box above. Lengths in mm, angles in degrees.
 */

/** Which corner of the box a screw belongs to; sides are named for someone facing the closed cabinet. */
export interface Corner {
  readonly hand: 'left' | 'right';
  readonly end: 'bottom' | 'top';
}

/** How a screw leans: outwards from the middle of the box, towards the side and towards the rail at its end. */
export interface Lean {
  /** Degrees in the plane across the side edge; + leans the tip towards the side edge of the front. */
  readonly side: number;
  /** Degrees in the plane across the bottom or top edge; + leans the tip towards that edge. */
  readonly rail: number;
}

/** What a screw may not do less, or more, than. */
export type LimitName =
  | 'cover'
  | 'bite'
  | 'wood'
  | 'groove'
  | 'joint line'
  | 'head to box side'
  | 'head to box bottom'
  | 'head to box edge'
  | 'screw in box'
  | 'pull hole'
  | 'other screw'
  | 'driver to box side'
  | 'driver to box bottom'
  | 'driver to box back'
  | 'angle'
  | 'guide bore'
  | 'withdrawal';

/** One limit at one screw: how much there is over what must be. */
export interface Margin {
  readonly limit: LimitName;
  /** mm over the least that the shop standard asks for (degrees for `angle`, N for `withdrawal`); below 0 it fails. */
  readonly over: number;
  /** What there is, in the same unit. */
  readonly is: number;
  /** What is asked for. */
  readonly least: number;
  /** What it is measured against, in words: `the inner edge of the stile`, `the chuck to the box side`. */
  readonly against: string;
}

/** Wood that a screw may be in: a convex outline in the back view, with the groove that it must not touch. */
export interface Wood {
  readonly name: 'slab' | 'left stile' | 'right stile' | 'top rail' | 'bottom rail';
  /** Counter-clockwise. */
  readonly outline: readonly Point[];
}

/** Where one screw goes. */
export interface ScrewPlace {
  readonly corner: Corner;
  /** 0 for the corner's own screw, 1 for the next one along the row, and so on. */
  readonly index: number;
  /** The row that it stands in: along the bottom or top of the box, or up its side. */
  readonly along: 'end' | 'side';
  /** Middle of the head on the inside face of the box front (z = box front thickness). */
  readonly entry: Point;
  /** From the inside face of the box's side, and from its lower (bottom) or upper (top) edge, mm. */
  readonly fromSide: number;
  readonly fromEnd: number;
  readonly lean: Lean;
  /** Degrees between the screw and the straight way in. */
  readonly angle: number;
  /** The smallest angle that every limit allows; `angle` is this, rounded up to the shop's step where that fits. */
  readonly smallestAngle: number;
  /** Unit vector along the screw, from head to tip. */
  readonly direction: { readonly x: number; readonly y: number; readonly z: number };
  readonly wood: Wood['name'];
  /** Of the pilot, from the back of the front to the screw's tip, along the screw. */
  readonly pilotDepth: number;
  readonly margins: readonly Margin[];
  /** The limits that keep the angle from being smaller; none for a straight screw. */
  readonly active: readonly LimitName[];
}

/** The holes for one screw, and the drill that makes them. Lengths in mm along the screw. */
export interface Holes {
  readonly plan: HolePlan;
  /** Why, for the sheet. */
  readonly why: string;
  /** A drill of the shop. */
  readonly pilotDiameter: number;
  /** What the handbook's share of the root diameter comes to. */
  readonly pilotTarget: number;
  /** From the back of the front into it, for a straight screw; a leaning one's is in its place. */
  readonly pilotDepth: number;
  /** Through the box front; 0 where the pilot goes through both. */
  readonly clearanceDiameter: number;
}

/** Places that no limit allows, with the nearest miss and what would cure it. */
export interface Impossible {
  readonly corner: Corner;
  readonly index: number;
  readonly along: 'end' | 'side';
  /** The place with the least miss, so that it can be drawn; its `angle` is the one that comes nearest. */
  readonly nearest: ScrewPlace;
  /** The screw that comes nearest. */
  readonly screw: StockScrew;
  /** The margins at the nearest miss, the worst one first. */
  readonly margins: readonly Margin[];
  /** Whole sentences: `a screw of 1 in in place of 1-1/4 in`, `a stile 3/16 in wider`. */
  readonly cures: readonly string[];
}

/** How one drawer's front is screwed on. */
export interface Fastening {
  readonly fit: DrawerFit;
  /** The chosen screw; null when none in stock fits. */
  readonly screw: StockScrew | null;
  readonly places: readonly ScrewPlace[];
  readonly impossible: readonly Impossible[];
  readonly holes: Holes | null;
  /** N: what all screws hold together after the safety factor, and what is asked for. */
  readonly withdrawal: { readonly capacity: number; readonly pull: number };
  /** Centres and diameter of the pull's holes, back view. */
  readonly pullHoles: { readonly diameter: number; readonly centers: readonly Point[] };
  /** The tightest margin in mm over all screws; null when there is no screw. */
  readonly tightest: Margin | null;
}
