import { signedArea } from './measure.ts';
import type { ClosedContour, RingContour } from './types.ts';

/** The same ring walked the other way; it starts at the same vertex, its bulges change sign. */
export function reverseRing(ring: RingContour): RingContour {
  const { vertices } = ring;
  const count = vertices.length;
  return {
    kind: 'ring',
    vertices: vertices.flatMap((_, index) => {
      const here = vertices[(count - index) % count];
      const before = vertices[(2 * count - index - 1) % count];
      return here === undefined || before === undefined ? [] : [{ ...here, bulge: -before.bulge || 0 }];
    }),
  };
}

/** The contour counter-clockwise, as outer outlines are kept; a circle has no direction. */
export const counterClockwise = <C extends ClosedContour>(contour: C): C | RingContour =>
  contour.kind === 'ring' && signedArea(contour) < 0 ? reverseRing(contour) : contour;

/** The contour clockwise, as holes are kept; a circle has no direction. */
export const clockwise = <C extends ClosedContour>(contour: C): C | RingContour =>
  contour.kind === 'ring' && signedArea(contour) > 0 ? reverseRing(contour) : contour;
