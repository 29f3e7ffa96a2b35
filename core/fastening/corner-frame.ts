import type { Point } from '../geometry/types.ts';
import { roundTo } from '../units/tolerances.ts';
import type { BoxWalls } from './box-walls.ts';
import type { Corner } from './types.ts';

/**
 * Measures from a corner of the box, the same for every corner, so that equal corners are one problem: x from
 * the inside face of the box's side towards its middle, y from its lower or upper edge towards half its height.
 *
 *     |side|                     y
 *     |    |                     ^
 *     |    |   o screw           |
 *     |    |                     |
 *     +----+------------- lower edge ---> x
 */
export interface CornerFrame {
  readonly origin: Point;
  /** +1 where the measure grows with the back view's coordinate, -1 where it shrinks. */
  readonly along: { readonly x: 1 | -1; readonly y: 1 | -1 };
}

/** Decimals of a measure in mm: what float noise parts is one problem. */
const DECIMALS = 9;

export const cornerFrame = (walls: BoxWalls, { hand, end }: Corner): CornerFrame => ({
  origin: {
    x: hand === 'right' ? walls.right + walls.side : walls.left - walls.side,
    y: end === 'bottom' ? walls.bottom : walls.top,
  },
  along: { x: hand === 'right' ? 1 : -1, y: end === 'bottom' ? 1 : -1 },
});

/** A point of the back view, measured from the corner. */
export const intoFrame = ({ origin, along }: CornerFrame, { x, y }: Point): Point => ({
  x: roundTo(along.x * (x - origin.x), DECIMALS),
  y: roundTo(along.y * (y - origin.y), DECIMALS),
});

/** A measured point, in the back view. */
export const outOfFrame = ({ origin, along }: CornerFrame, { x, y }: Point): Point => ({
  x: origin.x + along.x * x,
  y: origin.y + along.y * y,
});

/** A direction, either way. */
export const turnIntoFrame = ({ along }: CornerFrame, { x, y }: Point): Point => ({
  x: along.x * x || 0,
  y: along.y * y || 0,
});
