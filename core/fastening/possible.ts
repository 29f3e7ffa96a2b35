import { cutsOf, leastLean } from './cuts.ts';
import { entryRegion } from './entry-region.ts';
import type { EntryRegion } from './entry-region.ts';
import type { PlaceLimits } from './limits/types.ts';
import { onlySlope } from './slope.ts';
import type { Slope, SlopeBox } from './slope.ts';

/** mm. A limit holds if it fails by no more than this, which is far below any tool and above float noise. */
export const HOLDS = -1e-7;

/** The entries from which a screw of this slope obeys every limit with `level` mm over; null: none. */
export const regionAt = (limits: PlaceLimits, slope: Slope, level = HOLDS): EntryRegion | null =>
  regionIn(limits, onlySlope(slope), level);

/** The same for a box of slopes at its best: null proves that no slope in the box has such an entry. */
export function regionIn(limits: PlaceLimits, box: SlopeBox, level = HOLDS): EntryRegion | null {
  return leastLean(limits, box) < level ? null : entryRegion(cutsOf(limits, box), level);
}
