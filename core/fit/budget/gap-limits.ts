import type { Edge } from '../../order/types.ts';
import type { ShopStandard } from '../../rules/types.ts';
import type { DrawerFit } from '../types.ts';
import type { Span } from './types.ts';

/**
 * What the gap of an edge may be once the front is dialled in, mm; null where the front laps a member and
 * shows no gap. `tolerance` is what a gap may differ from the one that the edge asks for. Where nobody says,
 * it is half of that gap (common practice, no source); a gap is never less than the shop's smallest.
 */
export function gapLimits(
  edge: Edge,
  fit: DrawerFit,
  standard: ShopStandard,
  tolerance: number | undefined,
): Span | null {
  const { condition } = fit.rules.edges[edge];
  if (condition.kind !== 'inset' && condition.kind !== 'share') return null;
  const within = tolerance ?? condition.gap / 2;
  const least = Math.max(standard.limits.smallestGap.value, condition.gap - within);
  return { least, most: Math.max(least, condition.gap + within) };
}
