import { SAME_LENGTH } from '../units/tolerances.ts';
import { contains } from './contains.ts';
import { distanceToContour } from './distance.ts';
import { signedArea } from './measure.ts';
import { reversed, segmentsOf, type Segment } from './segments.ts';
import type { CircleContour, ClosedContour } from './types.ts';

/**
 * The loops of an area: counter-clockwise rings are its outlines, clockwise ones its holes. A circle has no
 * direction, so its place tells: wholly inside the area that the others make it is a hole, anywhere else solid.
 */
export function regionLoops(contours: readonly ClosedContour[]): readonly (readonly Segment[])[] {
  const solid = new Map<ClosedContour, 1 | -1>();
  for (const contour of contours) {
    if (contour.kind === 'ring') solid.set(contour, signedArea(contour) < 0 ? -1 : 1);
  }
  const circles = contours.filter((contour) => contour.kind === 'circle');
  for (const circle of circles.toSorted((a, b) => b.radius - a.radius)) {
    let depth = 0;
    for (const [other, sign] of solid) if (liesIn(circle, other)) depth += sign;
    solid.set(circle, depth > 0 ? -1 : 1);
  }
  return contours.map((contour) => loop(contour, contour.kind === 'circle' && solid.get(contour) === -1));
}

/** The loops of cutters, each solid by itself, so that a drill inside a slot is still a hole. */
export const cutterLoops = (contours: readonly ClosedContour[]): readonly (readonly Segment[])[] =>
  contours.map((contour) => loop(contour, false));

const loop = (contour: ClosedContour, hole: boolean): readonly Segment[] =>
  hole ? segmentsOf(contour).map(reversed).reverse() : segmentsOf(contour);

const liesIn = (circle: CircleContour, other: ClosedContour): boolean =>
  contains(other, circle.center) && distanceToContour(circle.center, other) >= circle.radius - SAME_LENGTH;
