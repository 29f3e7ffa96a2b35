import { flatten } from './flatten.ts';
import { bounds, type Bounds } from './measure.ts';
import { segmentsOf } from './segments.ts';
import type { ClosedContour, Point } from './types.ts';

/** The corner of a box, for someone who looks at it with y up. */
export type BoxCorner = 'bottom-left' | 'bottom-right' | 'top-left' | 'top-right';

/** The part of an outline's box, at one of its corners, that the outline leaves free. Sizes in mm. */
export interface Notch {
  readonly corner: BoxCorner;
  readonly width: number;
  readonly height: number;
}

/** mm. How far a flattened arc may lie within the true one; a notch is kept that much smaller. */
const FLATNESS = 0.01;

const CORNERS: readonly BoxCorner[] = ['bottom-left', 'bottom-right', 'top-left', 'top-right'];

/**
 * The largest rectangle at a corner of the box of outlines that they leave free; null if there is none.
 *
 *      ┌──┐░░░░░
 *      │  │░░░░░   of an L, what its arms enclose
 *      │  └────┐
 *      └───────┘
 */
export function largestNotch(...outlines: readonly ClosedContour[]): Notch | null {
  const box = bounds(...outlines);
  const rings = outlines.map((outline) =>
    segmentsOf(outline).flatMap((segment) => flatten(segment, FLATNESS)),
  );
  return CORNERS.reduce<Notch | null>((largest, corner) => {
    const notch = notchAt(corner, rings, box);
    return area(notch) > area(largest) ? notch : largest;
  }, null);
}

const area = (notch: Notch | null): number => (notch === null ? 0 : notch.width * notch.height);

/** Points seen from a corner of the box: x and y are the ways from the box's sides at that corner. */
function notchAt(
  corner: BoxCorner,
  rings: readonly (readonly Point[])[],
  { min, max }: Bounds,
): Notch | null {
  const seen = rings.map((points) =>
    points.map(({ x, y }) => ({
      x: corner.endsWith('left') ? x - min.x : max.x - x,
      y: corner.startsWith('bottom') ? y - min.y : max.y - y,
    })),
  );
  const widths = [...new Set(seen.flat().map(({ x }) => x))].filter((width) => width > 2 * FLATNESS);
  let best: Notch | null = null;
  for (const width of widths) {
    const height = Math.min(...seen.map((points) => nearestWithin(points, width))) - FLATNESS;
    const notch = { corner, width: width - FLATNESS, height };
    if (height > FLATNESS && area(notch) > area(best)) best = notch;
  }
  return best;
}

/** The least y of a closed line of points where its x is less than `width`. */
function nearestWithin(points: readonly Point[], width: number): number {
  let least = Infinity;
  for (const [index, a] of points.entries()) {
    const b = points[(index + 1) % points.length];
    if (a.x < width) least = Math.min(least, a.y);
    if (b === undefined || a.x < width === b.x < width) continue;
    least = Math.min(least, a.y + ((width - a.x) / (b.x - a.x)) * (b.y - a.y));
  }
  return least;
}
