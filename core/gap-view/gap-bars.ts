import type { AdjustmentBudget, Span } from '../fit/budget/types.ts';
import { EDGES, type Edge } from '../order/types.ts';
import type { LengthUnit } from '../units/unit.ts';
import { axisTicks } from './axis-ticks.ts';
import type { GapBar, GapBars, NeededReach } from './types.ts';

/** The axis goes on past what is drawn by this share of it. */
const BEYOND = 0.04;

/**
 * The edges of a drawer as bars along the travel of their adjusters: what there is, what the errors may ask for,
 * and where to start.
 */
export function gapBars(budget: AdjustmentBudget, unit: LengthUnit): GapBars {
  const bars = EDGES.flatMap((edge) => gapBar(edge, budget) ?? []);
  const drawn = bars.flatMap(({ available, spread, needed, target }) => [
    ...[available, spread.worst, needed.worst, needed.likely].flatMap(({ least, most }) => [least, most]),
    target,
  ]);
  // 0 is where adjusters are delivered, and is always seen.
  const [least, most] = [Math.min(0, ...drawn), Math.max(0, ...drawn)];
  const beyond = Math.max(most - least, 1) * BEYOND;
  const axis = { least: least - beyond, most: most + beyond };
  return {
    bars,
    laps: EDGES.filter((edge) => budget.edges[edge].needed === null),
    axis,
    ticks: axisTicks(axis, unit),
  };
}

function gapBar(edge: Edge, { edges, fit, start }: AdjustmentBudget): GapBar | null {
  const { limits, spread, needed, available, margin, shares } = edges[edge];
  const gap = fit.gaps[edge];
  if (limits === null || needed === null || margin === null || gap === null) return null;
  const sideways = edge === 'left' || edge === 'right';
  // With nothing off the two height adjusters stand alike.
  const target = sideways ? start.side : start.heightLeft;
  const about = (off: number): Span => ({ least: target - off, most: target + off });
  return {
    edge,
    adjuster: sideways ? 'side' : 'height',
    gap,
    limits,
    available,
    target,
    spread: { worst: about(spread.worst), likely: about(spread.likely) },
    needed: { worst: reach(needed.worst), likely: reach(needed.likely) },
    margin: { worst: margin.worst, likely: margin.likely },
    dominant: shares[0] ?? null,
  };
}

const reach = ({ least, most }: Span): NeededReach => ({
  least: Math.min(least, most),
  most: Math.max(least, most),
  free: most < least,
});
