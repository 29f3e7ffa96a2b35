import { distance, dot } from '../geometry/vector.ts';
import type { Point } from '../geometry/types.ts';
import { nearestOnWay } from './capsule.ts';
import { bestOfLean, bestOfPlane } from './limits/best.ts';
import type { PlaceLimits } from './limits/types.ts';
import { degreesOf, onlySlope, tangentOf } from './slope.ts';
import type { Slope } from './slope.ts';
import type { LimitName, Margin } from './types.ts';

/** What there is of each limit for a screw: one margin a limit, the tightest of those that share its name. */
export function marginsAt(limits: PlaceLimits, slope: Slope, entry: Point): readonly Margin[] {
  const box = onlySlope(slope);
  const [secant] = box.secant;
  const planes = limits.planes.map((plane): Margin => {
    const { limit, against, least, unless } = plane;
    const over = bestOfPlane(plane, box);
    if (over === Infinity && unless !== null) return marginOf(unless, bestOfLean(unless, box) - unless.least);
    return marginOf({ limit, against, least }, over + dot(plane.normal, entry));
  });
  const leans = limits.leans.map((lean) => marginOf(lean, bestOfLean(lean, box) - lean.least));
  const holes = limits.holes.map((hole) => {
    const tip = {
      x: entry.x - (slope.side * hole.length) / secant,
      y: entry.y - (slope.rail * hole.length) / secant,
    };
    const away = distance(nearestOnWay(entry, tip, hole.center), hole.center);
    return marginOf(hole, away - hole.radii - hole.least);
  });
  const angle = degreesOf(tangentOf(slope));
  const lean: Margin = {
    limit: 'angle',
    over: limits.largestAngle - angle,
    is: angle,
    least: limits.largestAngle,
    against: 'the largest angle',
  };
  return [...tightestOfEach([...planes, ...leans, ...holes]), lean];
}

const marginOf = (
  { limit, against, least }: Pick<Margin, 'limit' | 'against' | 'least'>,
  over: number,
): Margin => ({ limit, over, is: over + least, least, against });

function tightestOfEach(margins: readonly Margin[]): readonly Margin[] {
  const tightest = new Map<LimitName, Margin>();
  for (const margin of margins) {
    const known = tightest.get(margin.limit);
    if (known === undefined || margin.over < known.over) tightest.set(margin.limit, margin);
  }
  return [...tightest.values()];
}

/** Whether a margin is a length in mm, and so can be weighed against others. */
export const isLength = ({ limit }: Margin): boolean => limit !== 'angle' && limit !== 'withdrawal';

/** The tightest margin in mm; null when there is none. */
export const tightestMargin = (margins: readonly Margin[]): Margin | null =>
  margins.filter(isLength).reduce<Margin | null>((a, b) => (a === null || b.over < a.over ? b : a), null);
