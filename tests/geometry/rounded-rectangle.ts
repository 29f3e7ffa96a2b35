import { fillet } from '../../core/geometry/fillet.ts';
import { rectangle } from '../../core/geometry/rectangle.ts';
import type { Point, RingContour } from '../../core/geometry/types.ts';

/**
 * An upright rectangle with four corners rounded by tangent arcs, sizes in mm; radius 0 leaves them sharp.
 *
 *     roundedRectangle(100, 40, 5)   //  ╭────╮
 *                                    //  ╰────╯
 *
 * A radius of half a side gives a slot; more throws.
 */
export function roundedRectangle(
  width: number,
  height: number,
  radius: number,
  at: Point = { x: 0, y: 0 },
): RingContour {
  if (!(radius >= 0 && radius <= Math.min(width, height) / 2)) {
    throw new RangeError(`roundedRectangle: radius ${radius} does not fit ${width} x ${height}`);
  }
  const sharp = rectangle(width, height, at);
  // From the last corner to the first, so that the indices of those to come stay true.
  return radius === 0 ? sharp : [3, 2, 1, 0].reduce((ring, corner) => fillet(ring, corner, radius), sharp);
}
