import { segmentsOf, type ArcSegment, type Segment } from './segments.ts';
import type { Contour, Point } from './types.ts';
import { distance, turnOf } from './vector.ts';

/** Whether an angle in radians lies within an arc's sweep, ends included; `slack` in radians widens both ends. */
export function sweeps(arc: ArcSegment, angle: number, slack = 0): boolean {
  const turn = arc.sweep >= 0 ? turnOf(angle - arc.startAngle) : turnOf(arc.startAngle - angle);
  return turn <= Math.abs(arc.sweep) + slack || turn >= 2 * Math.PI - slack;
}

/** Distance in mm from a point to the nearest point of a segment. */
export function distanceToSegment(point: Point, segment: Segment): number {
  const { start, end } = segment;
  if (segment.kind === 'line') {
    const dx = end.x - start.x;
    const dy = end.y - start.y;
    const length2 = dx * dx + dy * dy;
    const share = length2 === 0 ? 0 : ((point.x - start.x) * dx + (point.y - start.y) * dy) / length2;
    if (share <= 0) return distance(point, start);
    if (share >= 1) return distance(point, end);
    return Math.abs((point.x - start.x) * dy - (point.y - start.y) * dx) / Math.sqrt(length2);
  }
  const { center, radius } = segment;
  if (sweeps(segment, Math.atan2(point.y - center.y, point.x - center.x))) {
    return Math.abs(distance(point, center) - radius);
  }
  return Math.min(distance(point, start), distance(point, end));
}

/** Distance in mm from a point to the nearest point of a contour's line; never negative. */
export function distanceToContour(point: Point, contour: Contour): number {
  if (contour.kind === 'circle') return Math.abs(distance(point, contour.center) - contour.radius);
  return segmentsOf(contour).reduce(
    (least, segment) => Math.min(least, distanceToSegment(point, segment)),
    Infinity,
  );
}
