import type { Drawer, Edge, LengthUnit } from '../order/types.ts';
import type { ResolvedRules } from '../rules/resolved.ts';

/** A drawer with everything that its rules fix. Lengths in mm. */
export interface DrawerFit {
  readonly drawer: Drawer;
  readonly rules: ResolvedRules;
  /** Unit in which findings about it are told. */
  readonly unit: LengthUnit;
  /** How far the front's edge lies outside the box's face on that side; negative: the box stands proud. */
  readonly overhang: Readonly<Record<Edge, number>>;
  readonly frontW: number;
  readonly frontH: number;
  readonly frontThickness: number;
  readonly boxW: number;
  readonly boxH: number;
  readonly boxSide: number;
  readonly boxFront: number;
  /** Box side to opening side with the box in the middle. */
  readonly runningClearance: number;
  /** Gap of each edge that has one, after the front has been dialled in; null where the front laps a member. */
  readonly gaps: Readonly<Record<Edge, number | null>>;
}

/** A rectangle of the closed cabinet, seen by someone facing it: x to the right, y down from the top. */
export interface Placed {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}
