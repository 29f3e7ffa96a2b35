import type { Point } from '../geometry/types.ts';
import { bestOfLean, bestOfPlane } from './limits/best.ts';
import type { PlaceLimits } from './limits/types.ts';
import type { Capsule } from './capsule.ts';
import type { SlopeBox } from './slope.ts';

/**
 * The limits of a box of slopes at their best, as they stand for the entry point: half planes, and the holes
 * that it may not be near. For a single slope they are exact; for a wider box no slope in it allows more.
 */
export interface Cuts {
  /** An upright rectangle: least and most of x and y at which the plane limits have 0 over. */
  readonly least: Point;
  readonly most: Point;
  /** Half planes that are not upright or level: normal · entry + over >= 0. */
  readonly slanted: readonly { readonly normal: Point; readonly over: number }[];
  readonly capsules: readonly Capsule[];
}

export function cutsOf(limits: PlaceLimits, box: SlopeBox): Cuts {
  let [x0, x1, y0, y1] = [-Infinity, Infinity, -Infinity, Infinity];
  const slanted: { normal: Point; over: number }[] = [];
  for (const plane of limits.planes) {
    const over = bestOfPlane(plane, box);
    const { x, y } = plane.normal;
    if (y === 0 && x === 1) x0 = Math.max(x0, -over);
    else if (y === 0 && x === -1) x1 = Math.min(x1, over);
    else if (x === 0 && y === 1) y0 = Math.max(y0, -over);
    else if (x === 0 && y === -1) y1 = Math.min(y1, over);
    else if (over !== Infinity) slanted.push({ normal: plane.normal, over });
  }
  return {
    least: { x: x0, y: y0 },
    most: { x: x1, y: y1 },
    slanted,
    capsules: limits.holes.length === 0 ? [] : capsulesOf(limits, box),
  };
}

/** The least in mm that a limit of the angle alone has over, at the best slope of a box for each. */
export function leastLean({ leans }: Pick<PlaceLimits, 'leans'>, box: SlopeBox): number {
  let least = Infinity;
  for (const lean of leans) least = Math.min(least, bestOfLean(lean, box) - lean.least);
  return least;
}

/**
 * The entries from which the screw, seen from above, passes too near a hole: a capsule from the hole's centre
 * to where the screw would have to start for its tip to be there. What all slopes of a box forbid is at least
 * that of its middle, less how far the tip moves within the box.
 */
function capsulesOf(limits: PlaceLimits, { side, rail, secant }: SlopeBox): readonly Capsule[] {
  const middle = { x: (side[0] + side[1]) / 2, y: (rail[0] + rail[1]) / 2 };
  const spread = Math.sqrt((side[1] - side[0]) ** 2 + (rail[1] - rail[0]) ** 2) / 2;
  const along = spread === 0 ? secant[0] : Math.sqrt(1 + middle.x ** 2 + middle.y ** 2);
  return limits.holes.flatMap(({ center, radii, least, length }) => {
    // The tip goes outwards, against the frame; so the entry is that much further in.
    const radius = radii + least - length * spread;
    const to = { x: center.x + (middle.x * length) / along, y: center.y + (middle.y * length) / along };
    return [{ from: center, to, radius }];
  });
}
