import type { LimitName } from '../fastening/types.ts';
import type { ScrewSection } from './types.ts';

/** The letter that stands for a limit in a section's drawing and in the table beside it; null where it is not drawn. */
export function letterOf({ dimensions }: ScrewSection, limit: LimitName): string | null {
  const limits = [...new Set(dimensions.map((dimension) => dimension.limit))];
  const at = limits.indexOf(limit);
  return at === -1 ? null : String.fromCodePoint(65 + at);
}
