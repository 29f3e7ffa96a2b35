import type { Edge } from '../../order/types.ts';
import type { DrawerFit } from '../types.ts';

/** Wood of a front that moves, added up along each of its directions, mm across the grain. */
export interface MovingWood {
  readonly width: number;
  readonly height: number;
}

/** A front in air of one kind. Lengths in mm. */
export interface Season {
  /** Percent of moisture content that its wood comes to. */
  readonly moisture: number;
  readonly frontW: number;
  readonly frontH: number;
  /** null where the front laps a member. */
  readonly gaps: Readonly<Record<Edge, number | null>>;
}

/** How a front moves over the year. */
export interface SeasonBudget {
  readonly fit: DrawerFit;
  /** Percent of moisture content that it is fitted at. */
  readonly fittedAt: number;
  readonly moving: MovingWood;
  readonly dry: Season;
  readonly damp: Season;
  /** The gap to fit an edge with so that it never gets too small; null where it does not, or shows none. */
  readonly recommended: Readonly<Record<Edge, number | null>>;
}
