import type { PlaceLimits } from './limits/types.ts';
import { regionAt } from './possible.ts';
import { leanOf, slopeOf, tangentOf } from './slope.ts';
import type { Slope } from './slope.ts';
import type { Lean } from './types.ts';
import { tanDegrees } from '../units/angle.ts';

/** Degrees. Within this of a whole step an angle is at that step. */
const AT_STEP = 1e-6;

const roundUp = (degrees: number, step: number): number => Math.ceil(degrees / step - AT_STEP) * step;

/** The slope rounded up to whole steps of the shop's angle where that obeys every limit; else as it is. */
export function roundLean(limits: PlaceLimits, slope: Slope, step: number): Slope {
  const lean = leanOf(slope);
  const rounded: Lean = { side: roundUp(lean.side, step), rail: roundUp(lean.rail, step) };
  const tries = [rounded, { ...lean, side: rounded.side }, { ...lean, rail: rounded.rail }].map(slopeOf);
  const largest = tanDegrees(limits.largestAngle) * (1 + 1e-12);
  return tries.find((next) => tangentOf(next) <= largest && regionAt(limits, next) !== null) ?? slope;
}
