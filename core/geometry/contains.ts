import { segmentsOf, type Segment } from './segments.ts';
import type { ClosedContour, Point } from './types.ts';
import { cross, distance, dot, subtract } from './vector.ts';

/**
 * Signed angle in radians through which a segment is seen from a point. An arc is seen like its chord, with a
 * whole turn more where the point stands between chord and arc, and half a turn on the chord itself.
 */
function seenFrom(point: Point, segment: Segment): number {
  const [a, b] = [subtract(segment.start, point), subtract(segment.end, point)];
  const side = cross(a, b);
  const chord = Math.atan2(side, dot(a, b));
  if (segment.kind === 'line' || distance(point, segment.center) >= segment.radius) return chord;
  const turn = Math.sign(segment.sweep);
  if (side === 0) return Math.PI * turn;
  return side * turn < 0 ? chord + 2 * Math.PI * turn : chord;
}

/** How often closed segments run counter-clockwise around a point that is not on them; 0 is outside. */
export function windingOf(point: Point, segments: readonly Segment[]): number {
  let turned = 0;
  for (const segment of segments) turned += seenFrom(point, segment);
  return Math.round(turned / (2 * Math.PI));
}

/** Whether a point lies inside a closed contour, whichever way it runs. On the line itself either may come. */
export const contains = (contour: ClosedContour, point: Point): boolean =>
  contour.kind === 'circle'
    ? distance(point, contour.center) < contour.radius
    : windingOf(point, segmentsOf(contour)) !== 0;
