import { SAME_LENGTH } from '../units/tolerances.ts';
import { contains } from './contains.ts';
import { distanceToContour } from './distance.ts';
import { signedArea } from './measure.ts';
import { reversed, segmentsOf, type Segment } from './segments.ts';
import type { CircleContour, ClosedContour, RingContour } from './types.ts';

/** A closed contour walked with what it encloses on the left, or, for a hole, on the right. */
export interface Loop {
  readonly contour: ClosedContour;
  readonly segments: readonly Segment[];
  /** How often it runs counter-clockwise around what it encloses: -1 for a hole. */
  readonly winding: 1 | -1;
}

/**
 * The loops of an area: counter-clockwise rings are its outlines, clockwise ones its holes. A circle has no
 * direction, so its place tells: wholly inside the area that the others make it is a hole, anywhere else solid.
 */
export function regionLoops(contours: readonly ClosedContour[]): readonly Loop[] {
  const winding = new Map<ClosedContour, 1 | -1>();
  for (const contour of contours) if (contour.kind === 'ring') winding.set(contour, windingOfRing(contour));
  const circles = contours.filter((contour) => contour.kind === 'circle');
  for (const circle of circles.toSorted((a, b) => b.radius - a.radius)) {
    let depth = 0;
    for (const [other, sign] of winding) if (liesIn(circle, other)) depth += sign;
    winding.set(circle, depth > 0 ? -1 : 1);
  }
  return contours.map((contour) => loopOf(contour, winding.get(contour) ?? 1));
}

/** The loops of cutters, each solid by itself, so that a drill inside a slot is still a hole. */
export const cutterLoops = (contours: readonly ClosedContour[]): readonly Loop[] =>
  contours.map((contour) => loopOf(contour, contour.kind === 'ring' ? windingOfRing(contour) : 1));

const windingOfRing = (ring: RingContour): 1 | -1 => (signedArea(ring) < 0 ? -1 : 1);

const loopOf = (contour: ClosedContour, winding: 1 | -1): Loop => {
  const segments = segmentsOf(contour);
  const turned = contour.kind === 'circle' && winding === -1;
  return { contour, segments: turned ? segments.map(reversed).reverse() : segments, winding };
};

const liesIn = (circle: CircleContour, other: ClosedContour): boolean =>
  contains(other, circle.center) && distanceToContour(circle.center, other) >= circle.radius - SAME_LENGTH;
