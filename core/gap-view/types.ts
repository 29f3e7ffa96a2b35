import type { SourceShare, Span } from '../fit/budget/types.ts';
import type { Edge } from '../order/types.ts';

/** A reach that an adjuster must have, as it is drawn: `least` is never above `most`. */
export interface NeededReach extends Span {
  /** Any one setting of the span will do: the gap's limits are wider apart than the gap can stray. */
  readonly free: boolean;
}

/**
 * One edge that shows a gap, along the travel of the adjuster that moves it. Positions in mm of travel: + raises
 * the front, or moves it to the cabinet's right.
 */
export interface GapBar {
  readonly edge: Edge;
  readonly adjuster: 'side' | 'height';
  /** The gap that is aimed at, and what it may be, mm. */
  readonly gap: number;
  readonly limits: Span;
  /** How far the adjuster goes. */
  readonly available: Span;
  /** Where it comes to stand when nothing is off. */
  readonly target: number;
  /** Where it may have to go to make the gap exactly as aimed at. */
  readonly spread: { readonly worst: Span; readonly likely: Span };
  /** Where it must be able to go for the gap to be within its limits. */
  readonly needed: { readonly worst: NeededReach; readonly likely: NeededReach };
  /** Travel left over at the scarcer end, mm; below 0 it is missing. */
  readonly margin: { readonly worst: number; readonly likely: number };
  /** Where most of the spread comes from; null where nothing spreads. */
  readonly dominant: SourceShare | null;
}

/** A mark of the axis. */
export interface Tick {
  /** mm of travel. */
  readonly at: number;
  readonly words: string;
}

/** The bars of one drawer, on one axis so that they compare. */
export interface GapBars {
  readonly bars: readonly GapBar[];
  /** Edges that lap a member and show no gap. */
  readonly laps: readonly Edge[];
  readonly axis: Span;
  readonly ticks: readonly Tick[];
}
