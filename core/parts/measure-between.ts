import type { Point } from '../geometry/types.ts';
import { distance } from '../geometry/vector.ts';

/** What lies between two points, mm: the straight distance, and the ways to the right and up. */
export interface Measured {
  readonly distance: number;
  readonly dx: number;
  readonly dy: number;
}

/** @example measureBetween({ x: 1, y: 2 }, { x: 4, y: -2 }) // { distance: 5, dx: 3, dy: -4 } */
export const measureBetween = (from: Point, to: Point): Measured => ({
  distance: distance(from, to),
  dx: to.x - from.x,
  dy: to.y - from.y,
});
