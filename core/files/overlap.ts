import { distanceToSegment } from '../geometry/distance.ts';
import { lengthOf } from '../geometry/measure.ts';
import { pointAt, type Segment } from '../geometry/segments.ts';
import type { Point } from '../geometry/types.ts';
import { cross, distance, subtract, turnOf } from '../geometry/vector.ts';
import { CONTOUR_ERROR } from '../units/tolerances.ts';

/** mm. Segments that share less do not count as overlapping (requirement DXF-6). */
export const LEAST_OVERLAP = 0.01;

/** A stretch is that many times longer than the two are apart: short sides of a sharp corner are no overlap. */
const LEAST_SLENDERNESS = 50;

/** A stretch that two segments have in common. Length in mm. */
export interface Overlap {
  readonly length: number;
  readonly middle: Point;
}

/**
 * The stretch on which two segments run over each other, or null: both of its ends and its middle lie on both
 * within CONTOUR_ERROR, and it is longer than LEAST_OVERLAP.
 *
 *     a  o----------------o
 *     b          o------------------o
 *                |--------|  the overlap
 */
export function overlapOf(a: Segment, b: Segment): Overlap | null {
  if (areSkew(a, b)) return null;
  const shares = [0, 1, shareOf(b.start, a), shareOf(b.end, a)].sort((one, other) => one - other);
  const length = lengthOf(a);
  for (const [index, from] of shares.entries()) {
    const to = shares[index + 1] ?? 1;
    const common = (to - from) * length;
    if (common <= LEAST_OVERLAP) continue;
    const within = Math.min(CONTOUR_ERROR, common / LEAST_SLENDERNESS);
    const middle = (from + to) / 2;
    // The middle first: neighbours in a contour have an end in common, and part from there.
    if ([middle, from, to].every((share) => distanceToSegment(pointAt(a, share), b) <= within)) {
      return { length: common, middle: pointAt(a, middle) };
    }
  }
  return null;
}

/** Lines that part by more than the two ends of a stretch may be off; most neighbours in a contour do. */
function areSkew(a: Segment, b: Segment): boolean {
  if (a.kind === 'arc' || b.kind === 'arc') return false;
  const [along, across] = [subtract(a.end, a.start), subtract(b.end, b.start)];
  const most = (2 / LEAST_SLENDERNESS) * Math.hypot(along.x, along.y) * Math.hypot(across.x, across.y);
  return Math.abs(cross(along, across)) > most;
}

/** The share 0 to 1 of a segment's length at its point nearest to the given one. */
function shareOf(point: Point, segment: Segment): number {
  const { start, end } = segment;
  if (segment.kind === 'line') {
    const [dx, dy] = [end.x - start.x, end.y - start.y];
    const share = ((point.x - start.x) * dx + (point.y - start.y) * dy) / (dx * dx + dy * dy);
    return Math.min(1, Math.max(0, share));
  }
  const { center, startAngle, sweep } = segment;
  const angle = Math.atan2(point.y - center.y, point.x - center.x);
  const turned = sweep > 0 ? turnOf(angle - startAngle) : turnOf(startAngle - angle);
  if (turned <= Math.abs(sweep)) return turned / Math.abs(sweep);
  return distance(point, start) < distance(point, end) ? 0 : 1;
}
