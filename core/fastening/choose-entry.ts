import type { Point } from '../geometry/types.ts';
import { distance } from '../geometry/vector.ts';
import { cutsOf } from './cuts.ts';
import type { Cuts } from './cuts.ts';
import { entryRegion, nearestInRegion } from './entry-region.ts';
import type { EntryRegion } from './entry-region.ts';
import type { PlaceLimits } from './limits/types.ts';
import { HOLDS } from './possible.ts';
import { onlySlope, tangentOf } from './slope.ts';
import type { Slope } from './slope.ts';

/** mm. Entries that had to move are moved to whole steps of this where the limits allow. */
const STEP = 0.5;

/** mm. No margin of an entry is larger than any front. */
const WIDEST = 1e4;

/**
 * The entry of a screw of a possible slope. A straight one, and any that keeps a row, goes to the allowed point
 * nearest to where it is wanted; a leaning one to where its least margin is largest, and of those points to the
 * nearest. What is not the wanted place itself is rounded to half millimetres where that obeys every limit.
 */
export function chooseEntry(
  limits: PlaceLimits,
  slope: Slope,
  prefer: Point,
  aim: 'margin' | 'row',
): Point | null {
  const cuts = cutsOf(limits, onlySlope(slope));
  const allowed = entryRegion(cuts, HOLDS);
  if (allowed === null) return null;
  const widest = aim === 'margin' && tangentOf(slope) > 0;
  const level = widest ? largestLevel(cuts, HOLDS) : HOLDS;
  const point = nearestInRegion(entryRegion(cuts, level) ?? allowed, prefer);
  if (distance(point, prefer) === 0) return prefer;
  return roundEntry(allowed, point, widest ? point : prefer);
}

/** The largest level at which there is an entry, the limits of the angle alone left out; mm, to 1e-7. */
export function largestLevel(cuts: Cuts, possible: number): number {
  let [low, high] = [possible, Math.max(1, 2 * Math.abs(possible))];
  while (entryRegion(cuts, high) !== null && high < WIDEST) [low, high] = [high, 2 * high];
  while (high - low > 1e-7) {
    const middle = (low + high) / 2;
    if (entryRegion(cuts, middle) === null) high = middle;
    else low = middle;
  }
  return low;
}

/** The allowed point of the half-millimetre grid about a point that is nearest to where it is wanted. */
function roundEntry(allowed: EntryRegion, { x, y }: Point, wanted: Point): Point {
  const steps = (value: number) => [Math.floor(value / STEP) * STEP, Math.ceil(value / STEP) * STEP];
  const grid = steps(x).flatMap((gx) => steps(y).map((gy) => ({ x: gx, y: gy })));
  const tries = [...grid, ...steps(x).map((gx) => ({ x: gx, y })), ...steps(y).map((gy) => ({ x, y: gy }))];
  const fits = tries.filter((point) => distance(nearestInRegion(allowed, point), point) === 0);
  const whole = fits.filter((point) => grid.includes(point));
  const [first, ...rest] = whole.length > 0 ? whole : fits;
  if (first === undefined) return { x, y };
  return rest.reduce((best, next) => (distance(next, wanted) < distance(best, wanted) ? next : best), first);
}
