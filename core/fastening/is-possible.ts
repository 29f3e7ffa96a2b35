import type { PlaceLimits } from './limits/types.ts';
import { regionAt, regionIn } from './possible.ts';
import { allSlopes, middleOf, sectorBox, sectorSize, splitSector } from './sector.ts';
import type { Sector } from './sector.ts';
import { ONE_WAY, oneWay, slopeBox, STRAIGHT } from './slope.ts';
import type { PlaceProblem } from './solve-place.ts';
import { tanDegrees } from '../units/angle.ts';

/** Of a tangent. Sectors smaller than this count as impossible. */
const SMALL = 1e-4;

/** Whether a place can be solved at all, in any wood: quicker than to find the smallest angle. */
export const isPossible = ({ woods, ways }: PlaceProblem): boolean =>
  woods.some(({ limits }) => {
    if (regionAt(limits, STRAIGHT) !== null) return true;
    const [way] = ways;
    return ways.length === 1 && way !== undefined ? isPossibleOneWay(limits, way) : anySlope(limits);
  });

/** Whether some slope one way obeys every limit: quicker than to find the least of them. */
export function isPossibleOneWay(limits: PlaceLimits, way: 'side' | 'rail'): boolean {
  const holds = (tangent: number): boolean => regionAt(limits, oneWay(way, tangent)) !== null;
  const search = (low: number, high: number): boolean => {
    if (regionIn(limits, slopeBox(oneWay(way, low), oneWay(way, high))) === null) return false;
    if (high - low < ONE_WAY) return false;
    const middle = (low + high) / 2;
    return holds(middle) || search(low, middle) || search(middle, high);
  };
  const largest = tanDegrees(limits.largestAngle);
  return holds(0) || holds(largest) || search(0, largest);
}

function anySlope(limits: PlaceLimits): boolean {
  const search = (sector: Sector): boolean => {
    if (regionIn(limits, sectorBox(sector)) === null) return false;
    if (regionAt(limits, middleOf(sector)) !== null) return true;
    return sectorSize(sector) >= SMALL && splitSector(sector).some(search);
  };
  return search(allSlopes(tanDegrees(limits.largestAngle)));
}
