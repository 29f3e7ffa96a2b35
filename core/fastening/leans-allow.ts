import type { StockScrew } from '../rules/fastening-types.ts';
import { leastLean } from './cuts.ts';
import type { DrawerContext } from './drawer-context.ts';
import { isPossibleOneWay } from './is-possible.ts';
import { leanLimits } from './limits/lean-limits.ts';
import { bitFor } from './place-problem.ts';
import { HOLDS } from './possible.ts';
import { onlySlope, STRAIGHT } from './slope.ts';

/**
 * Whether a screw obeys the limits that depend on its angle alone, cover and bite above all, wherever it goes:
 * straight, or at any angle. A quick first question, for which no place's limits need be made.
 */
export function leansAllow(context: DrawerContext, screw: StockScrew, lean: 'straight' | 'any'): boolean {
  const leans = leanLimits({ ...context, screw, bit: bitFor(context, screw) });
  if (lean === 'straight') return leastLean({ leans }, onlySlope(STRAIGHT)) >= HOLDS;
  const largestAngle = context.standard.fastening.largestAngle.value;
  return isPossibleOneWay({ leans, planes: [], holes: [], largestAngle }, 'side');
}
