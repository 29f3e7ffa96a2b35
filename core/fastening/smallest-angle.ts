import type { PlaceLimits } from './limits/types.ts';
import { regionAt, regionIn } from './possible.ts';
import { allSlopes, sectorBox, sectorSize, slopeAt, splitSector } from './sector.ts';
import type { Sector } from './sector.ts';
import { ONE_WAY, oneWay, slopeBox, STRAIGHT, tangentOf } from './slope.ts';
import type { Slope } from './slope.ts';
import { tanDegrees } from '../units/angle.ts';

/** Which ways a screw may lean. */
export type Ways = readonly ('side' | 'rail')[];

/** The same for a lean both ways at once; 6e-4 degrees. */
const BOTH_WAYS = 1e-5;

/**
 * The least slope one way at which some entry obeys every limit; null: none up to the largest angle. Exact:
 * an interval of slopes is dropped only if no slope in it is possible, and of the rest the lower half is
 * searched first.
 */
export function smallestOneWay(limits: PlaceLimits, way: 'side' | 'rail'): Slope | null {
  const holds = (tangent: number): boolean => regionAt(limits, oneWay(way, tangent)) !== null;
  // In every call it is known already whether `low` itself holds: it does not.
  const search = (low: number, high: number): number | null => {
    if (regionIn(limits, slopeBox(oneWay(way, low), oneWay(way, high))) === null) return null;
    if (high - low < ONE_WAY) return holds(high) ? high : null;
    const middle = (low + high) / 2;
    const found = search(low, middle);
    if (found !== null) return found;
    return holds(middle) ? middle : search(middle, high);
  };
  const found = holds(0) ? 0 : search(0, largestTangent(limits));
  return found === null ? null : oneWay(way, found);
}

/**
 * The slope of the smallest whole angle, with a lean both ways; null: none. Sectors of slopes are dropped if
 * nothing in them is possible or nothing in them is better than what was found, so the angle is the smallest
 * to `BOTH_WAYS`.
 */
function smallestBothWays(limits: PlaceLimits): Slope | null {
  let best: Slope | null = null;
  let least = Infinity;
  const take = (tangent: number, direction: number): boolean => {
    const slope = slopeAt(tangent, direction);
    if (tangent >= least || regionAt(limits, slope) === null) return false;
    best = slope;
    least = tangent;
    return true;
  };
  const search = (sector: Sector): void => {
    if (sector.least >= least - BOTH_WAYS || regionIn(limits, sectorBox(sector)) === null) return;
    const middle = (sector.from + sector.to) / 2;
    if (take(sector.least, middle)) return;
    take(sector.most, middle);
    if (sectorSize(sector) < BOTH_WAYS) return;
    for (const half of splitSector(sector)) search(half);
  };
  // Nothing below what the limits of the angle alone allow, which are the same in every direction.
  const lowest = smallestOneWay({ ...limits, planes: [], holes: [] }, 'side');
  if (lowest === null) return null;
  search({ ...allSlopes(largestTangent(limits)), least: tangentOf(lowest) });
  return best;
}

const largestTangent = ({ largestAngle }: PlaceLimits): number => tanDegrees(largestAngle);

/**
 * The smallest lean in each of some woods, null where there is none: straight in any wood before a lean, a lean
 * one way in any wood before a lean both ways. Of two single ways the smaller angle is taken.
 */
export function smallestLeans(woods: readonly PlaceLimits[], ways: Ways): readonly (Slope | null)[] {
  const some = (slopes: readonly (Slope | null)[]): boolean => slopes.some((slope) => slope !== null);
  const straight = woods.map((limits) => (regionAt(limits, STRAIGHT) === null ? null : STRAIGHT));
  if (some(straight)) return straight;
  const single = woods.map((limits) => smallestSingle(limits, ways));
  return some(single) || ways.length < 2 ? single : woods.map(smallestBothWays);
}

const smallestSingle = (limits: PlaceLimits, ways: Ways): Slope | null =>
  ways
    .flatMap((way) => smallestOneWay(limits, way) ?? [])
    .reduce<Slope | null>((a, b) => (a === null || tangentOf(b) < tangentOf(a) ? b : a), null);
