import type { Edge } from '../../order/types.ts';
import type { ToleranceSource } from '../../rules/types.ts';
import type { DrawerFit } from '../types.ts';
import type { Move } from './places.ts';
import type { SampledShare } from './share-interval.ts';
import type { RegisteredSide } from './start-move.ts';

/** From `least` to `most`, mm. */
export interface Span {
  readonly least: number;
  readonly most: number;
}

/** A value by each way of stacking tolerances. */
export interface Stacked<T> {
  /** Every error at its worst. */
  readonly worst: T;
  /** Three standard deviations, by root sum square. */
  readonly likely: T;
  /** What 99.73 % of the samples stay within; null where none were drawn. */
  readonly simulated: T | null;
}

/** How much of the spread, as a share of its variance, comes from one source. */
export interface SourceShare {
  readonly source: ToleranceSource;
  readonly share: number;
}

/** One edge by itself, at the worse of its two corners. Lengths in mm. */
export interface EdgeBudget {
  /** The gap with the front hung exactly as designed and no adjuster touched; null where it laps. */
  readonly hung: number | null;
  /** What the gap may be once dialled in; null where there is none. */
  readonly limits: Span | null;
  /** How far the gap, or the lap, can be off before dialling in: ±. */
  readonly spread: Stacked<number>;
  /** 95 % interval of the simulated spread; null where no samples were drawn. */
  readonly simulatedWithin: Span | null;
  /** How far the adjuster must reach, in its own direction; null where there is no gap. */
  readonly needed: Stacked<Span> | null;
  /** How far it does reach: the side adjuster for the sides, the height adjusters for top and bottom. */
  readonly available: Span;
  /** Reach that is left over at its scarcer end; below 0 it does not reach. */
  readonly margin: Stacked<number> | null;
  /** The largest first; sources that do not touch this edge are left out. */
  readonly shares: readonly SourceShare[];
}

/** A set of limits that cannot all be kept at once when the front is off by more. */
export interface TightLimits {
  /** mm by which every gap of the set stays inside its limits, dialled in as well as can be. */
  readonly slack: number;
  /** In words: `left gap at the top not below 1/32"`. */
  readonly limits: readonly string[];
  readonly shares: readonly SourceShare[];
}

/** Whether all gaps of one drawer come within their limits together. */
export interface DrawerMargin {
  /** Everything made exactly to size. */
  readonly nominal: TightLimits;
  readonly worst: TightLimits;
  readonly likely: TightLimits;
}

/** Whether one front comes into its gaps with the slide's adjusters alone. */
export interface AdjustmentBudget {
  readonly fit: DrawerFit;
  readonly edges: Readonly<Record<Edge, EdgeBudget>>;
  /** The side that the box is set by. */
  readonly registered: RegisteredSide;
  /** What to set the adjusters to when nothing is off: from as hung to the predicted gaps. */
  readonly start: Move;
  /** All gaps together; null where the front shows none. */
  readonly margin: DrawerMargin | null;
  readonly reachableAtWorst: boolean;
  /** Whether three standard deviations are within reach. */
  readonly reachableLikely: boolean;
  /** The source of most of the spread where the margin is least; null where nothing spreads. */
  readonly dominant: SourceShare | null;
  /** How many of such fronts come in, with its 95 % interval; null where no samples were drawn. */
  readonly reach: SampledShare | null;
}

/** What an order's fronts will need. */
export interface OrderBudget {
  readonly drawers: readonly AdjustmentBudget[];
  /** Fronts of so many that the adjusters will not bring in, with a 95 % interval. */
  readonly rework: {
    readonly fronts: number;
    readonly expected: number;
    readonly low: number;
    readonly high: number;
  } | null;
}

export interface BudgetOptions {
  /** Monte Carlo samples of each drawer; 0 leaves them out. */
  readonly samples: number;
  /** A whole number that settles the samples. */
  readonly seed: number;
  /** The side that fronts are registered on. */
  readonly registered?: RegisteredSide;
  /** mm that a gap may differ from the one asked for; half of that where absent. */
  readonly gapTolerance?: number;
}
