import type { Point } from '../geometry/types.ts';
import type { Corner } from './types.ts';

/** A screw that is to find its place, measured in the frame of its corner; mm. */
export interface PlaceSpec {
  readonly corner: Corner;
  readonly index: number;
  readonly along: 'end' | 'side';
  /** Where it goes when nothing is against it. */
  readonly prefer: Point;
  /** Where its axis may enter the box front, so that it keeps from other screws. */
  readonly from: Point;
  readonly to: Point;
  /** A corner's screw takes the place with the largest margin if it must lean; one of a row keeps the row. */
  readonly aim: 'margin' | 'row';
}
