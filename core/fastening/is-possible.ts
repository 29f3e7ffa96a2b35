import type { PlaceLimits } from './limits/types.ts';
import { regionAt, regionIn } from './possible.ts';
import { allSlopes, middleOf, sectorBox, sectorSize, splitSector } from './sector.ts';
import type { Sector } from './sector.ts';
import { STRAIGHT } from './slope.ts';
import type { PlaceProblem } from './solve-place.ts';
import { smallestOneWay } from './smallest-angle.ts';
import { tanDegrees } from '../units/angle.ts';

/** Of a tangent. Sectors smaller than this count as impossible. */
const SMALL = 1e-4;

/** Whether a place can be solved at all, in any wood: quicker than to find the smallest angle. */
export const isPossible = ({ woods, ways }: PlaceProblem): boolean =>
  woods.some(({ limits }) => {
    if (regionAt(limits, STRAIGHT) !== null) return true;
    const [way] = ways;
    return ways.length === 1 && way !== undefined ? smallestOneWay(limits, way) !== null : anySlope(limits);
  });

function anySlope(limits: PlaceLimits): boolean {
  const search = (sector: Sector): boolean => {
    if (regionIn(limits, sectorBox(sector)) === null) return false;
    if (regionAt(limits, middleOf(sector)) !== null) return true;
    return sectorSize(sector) >= SMALL && splitSector(sector).some(search);
  };
  return search(allSlopes(tanDegrees(limits.largestAngle)));
}
