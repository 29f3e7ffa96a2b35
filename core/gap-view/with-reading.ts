import type { FrontCorner } from '../fit/budget/places.ts';
import { readingAt } from '../fit/dial-in/readings.ts';
import type { SeenGaps } from '../fit/dial-in/types.ts';
import type { Edge } from '../order/types.ts';

/** The reading of a gap, mm; null where it was not read. */
export const readingOf = (seen: SeenGaps, corner: FrontCorner, edge: Edge): number | null =>
  seen[corner]?.[readingAt({ edge })] ?? null;

/** The readings with one changed, or taken out (null). */
export function withReading(seen: SeenGaps, corner: FrontCorner, edge: Edge, mm: number | null): SeenGaps {
  const { [readingAt({ edge })]: _before, ...others } = seen[corner] ?? {};
  return { ...seen, [corner]: mm === null ? others : { ...others, [readingAt({ edge })]: mm } };
}
