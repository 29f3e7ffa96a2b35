import { SAME_LENGTH } from '../units/tolerances.ts';
import { boxesApart } from './box-pairs.ts';
import { contains } from './contains.ts';
import { distanceToSegment, sweeps } from './distance.ts';
import { meetSegments } from './intersect.ts';
import { boundsOfSegment, type Bounds } from './measure.ts';
import { segmentsOf, type ArcSegment, type Segment } from './segments.ts';
import type { ClosedContour, Point } from './types.ts';
import { angleOf, polar, subtract } from './vector.ts';

/** Least distance in mm between two segments, exact for arcs; 0 where they meet. */
function distanceBetween(a: Segment, b: Segment): number {
  if (!boxesApart(boundsOfSegment(a), boundsOfSegment(b)) && meetSegments(a, b).length > 0) return 0;
  const fromA = [a.start, a.end, ...innerPoints(a, b)].map((point) => distanceToSegment(point, b));
  const fromB = [b.start, b.end, ...innerPoints(b, a)].map((point) => distanceToSegment(point, a));
  return Math.min(...fromA, ...fromB);
}

/** Points within a segment, its ends aside, that may be nearest to another: where a normal of it meets an arc's centre. */
function innerPoints(segment: Segment, other: Segment): readonly Point[] {
  if (other.kind === 'line') return segment.kind === 'arc' ? squareTo(segment, other) : [];
  const { center } = other;
  if (segment.kind === 'line') {
    const along = subtract(segment.end, segment.start);
    const length2 = along.x ** 2 + along.y ** 2;
    const from = subtract(center, segment.start);
    const share = length2 === 0 ? 0 : (from.x * along.x + from.y * along.y) / length2;
    return share > 0 && share < 1
      ? [{ x: segment.start.x + along.x * share, y: segment.start.y + along.y * share }]
      : [];
  }
  return onArc(segment, angleOf(subtract(center, segment.center)));
}

/** The points of an arc where it runs along with a line. */
const squareTo = (arc: ArcSegment, line: Segment): readonly Point[] =>
  onArc(arc, angleOf(subtract(line.end, line.start)) + Math.PI / 2);

/** The points of an arc at an angle and opposite to it. */
const onArc = (arc: ArcSegment, angle: number): readonly Point[] =>
  [angle, angle + Math.PI].filter((way) => sweeps(arc, way)).map((way) => polar(arc.center, arc.radius, way));

/**
 * Least distance in mm between two closed contours, exact for arcs; 0 where they meet or one lies in the other.
 * Anything from `enough` mm on may be answered by Infinity, which is quicker.
 *
 *     clearance(rectangle(10, 10), rectangle(10, 10, { x: 16, y: 0 }))  // 6
 */
export function clearance(a: ClosedContour, b: ClosedContour, enough = Infinity): number {
  const [ofA, ofB] = [segmentsOf(a), segmentsOf(b)];
  const [startA, startB] = [ofA[0]?.start, ofB[0]?.start];
  if (startA === undefined || startB === undefined) throw new RangeError('clearance: a contour is empty');
  if (contains(a, startB) || contains(b, startA)) return 0;
  const boxes = ofB.map((segment) => boundsOfSegment(segment));
  let least = enough;
  for (const segment of ofA) {
    const box = boundsOfSegment(segment);
    for (const [index, other] of ofB.entries()) {
      const otherBox = boxes[index];
      if (otherBox === undefined || gap(box, otherBox) >= least) continue;
      least = Math.min(least, distanceBetween(segment, other));
      if (least <= SAME_LENGTH) return 0;
    }
  }
  return least < enough ? least : Infinity;
}

/** Least distance between two boxes. */
export const gap = (a: Bounds, b: Bounds): number =>
  Math.hypot(
    Math.max(0, a.min.x - b.max.x, b.min.x - a.max.x),
    Math.max(0, a.min.y - b.max.y, b.min.y - a.max.y),
  );
