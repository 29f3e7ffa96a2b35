import { circle } from '../geometry/circle.ts';
import type { Point } from '../geometry/types.ts';
import { HANG_HOLE } from './proportions.ts';
import type { Hole } from './types.ts';

/** The hole to hang a jig by, about a point of a piece (mm). */
export const hangHole = (middle: Point): Hole => ({
  contour: circle(middle, HANG_HOLE / 2),
  purpose: 'hang',
  seatCorners: [],
});
