import { SAME_LENGTH } from '../units/tolerances.ts';
import { carrierOf, meetCarriers } from './carrier.ts';
import { distanceToSegment } from './distance.ts';
import type { Segment } from './segments.ts';
import type { Point } from './types.ts';
import { distance } from './vector.ts';

/**
 * The points that two segments share, exact: crossings, touches and tangent points, in no special order.
 *
 *     meetSegments(line(0,0 → 10,0), line(5,-5 → 5,5))  // [{ x: 5, y: 0 }]
 *
 * Segments that lie on each other share a whole stretch; its ends are given. What misses by no more than `slack`
 * mm counts as touching.
 */
export function meetSegments(a: Segment, b: Segment, slack = SAME_LENGTH): readonly Point[] {
  const crossings = meetCarriers(carrierOf(a), carrierOf(b), slack).filter(
    (point) => distanceToSegment(point, a) <= slack && distanceToSegment(point, b) <= slack,
  );
  const ends = [
    ...[a.start, a.end].filter((point) => distanceToSegment(point, b) <= slack),
    ...[b.start, b.end].filter((point) => distanceToSegment(point, a) <= slack),
  ];
  // Ends first: where a crossing falls on an end within the slack, the end is the exact point.
  const found = [...ends, ...crossings];
  return found.filter(
    (point, index) => !found.slice(0, index).some((other) => distance(other, point) <= 2 * slack),
  );
}
