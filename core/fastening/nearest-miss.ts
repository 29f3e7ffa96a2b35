import type { Point } from '../geometry/types.ts';
import { largestLevel } from './choose-entry.ts';
import { cutsOf, leastLean } from './cuts.ts';
import { entryRegion, nearestInRegion } from './entry-region.ts';
import type { PlaceLimits } from './limits/types.ts';
import { regionAt, regionIn } from './possible.ts';
import { allSlopes, middleOf, sectorBox, sectorSize, slopeAt, splitSector } from './sector.ts';
import type { Sector } from './sector.ts';
import { onlySlope, STRAIGHT, tangentOf } from './slope.ts';
import type { Slope } from './slope.ts';
import { tanDegrees } from '../units/angle.ts';

/** The slope and entry at which the worst limit fails by least. */
export interface NearestMiss {
  readonly slope: Slope;
  readonly entry: Point;
  /** mm that the worst limit has over; below 0 where the place is impossible. */
  readonly level: number;
}

/** mm. No slope has a nearest miss that is nearer by more than this; what is found is polished further. */
const FINE = 0.25;

/** Of a tangent. Sectors smaller than this are not searched further. */
const SMALL = 1e-3;

/** Slopes that are tried before the search, each way. */
const TRIES = 5;

/** mm. No limit is missed by more than any front is wide. */
const WORST = -1e4;

/**
 * The nearest miss over all slopes that one may choose; null where none comes nearer than `floor` mm. Sectors of
 * slopes in which none does better by `FINE` than the best so far are dropped.
 */
export function nearestMiss(limits: PlaceLimits, prefer: Point, floor = WORST): NearestMiss | null {
  const most = tanDegrees(limits.largestAngle);
  let best: Slope | null = null;
  let level = Math.max(floor, WORST);
  const take = (slope: Slope, by: number): boolean => {
    if (tangentOf(slope) > most || slope.side < 0 || slope.rail < 0) return false;
    if (regionAt(limits, slope, level + by) === null) return false;
    best = slope;
    level = levelAt(limits, slope);
    return true;
  };
  const polish = (): void => {
    for (let step = most / TRIES; step > 1e-6; step /= 2) {
      const from = best ?? STRAIGHT;
      for (const [side, rail] of DIRECTIONS) {
        take({ side: from.side + side * step, rail: from.rail + rail * step }, 1e-6);
      }
    }
  };
  const search = (sector: Sector): void => {
    if (regionIn(limits, sectorBox(sector), level + FINE) === null) return;
    take(middleOf(sector), FINE);
    if (sectorSize(sector) < SMALL) return;
    for (const half of splitSector(sector)) search(half);
  };
  for (let tangent = 0; tangent < TRIES; tangent += 1) {
    for (let direction = 0; direction < TRIES; direction += 1) {
      take(slopeAt((most * tangent) / TRIES, (Math.PI * direction) / (2 * (TRIES - 1))), 1e-6);
    }
  }
  polish();
  search(allSlopes(most));
  if (best === null) return null;
  polish();
  return { slope: best, level, entry: entryAt(limits, best, prefer) };
}

const DIRECTIONS = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
  [1, 1],
  [-1, -1],
  [1, -1],
  [-1, 1],
] as const;

/** The level of one slope: what the worst limit has over at its best entry. */
function levelAt(limits: PlaceLimits, slope: Slope): number {
  const box = onlySlope(slope);
  return Math.min(leastLean(limits, box), largestLevel(cutsOf(limits, box), WORST));
}

/** The best entry of a slope, whatever the angle alone misses. */
function entryAt(limits: PlaceLimits, slope: Slope, prefer: Point): Point {
  const cuts = cutsOf(limits, onlySlope(slope));
  const region = entryRegion(cuts, largestLevel(cuts, WORST));
  return region === null ? prefer : nearestInRegion(region, prefer);
}
