import { fillet } from '../geometry/fillet.ts';
import { polygon } from '../geometry/polygon.ts';
import type { Point, RingContour } from '../geometry/types.ts';
import { RECESS } from './proportions.ts';

/** One long side of a strip. Lengths in mm. */
export interface StripSide {
  readonly y: number;
  /** Radius of its two corners. */
  readonly corner: number;
  /** Stands back in the middle, so that it bears on two lands at its ends. */
  readonly lands: boolean;
}

export interface Strip {
  readonly outline: RingContour;
  /** The straight stretches that can touch something, on either long side. */
  readonly low: readonly (readonly [Point, Point])[];
  readonly high: readonly (readonly [Point, Point])[];
}

/** mm. Shorter strips bear on their whole length; lands are no shorter than the second. Common practice, no source. */
const SHORTEST_WITH_LANDS = 60;
const SHORTEST_LAND = 15;

/**
 * A strip about x = 0 with rounded corners and, where asked, long sides that bear on two lands.
 *
 *      ____              ____   high.y
 *     /    \____________/    \
 *     |                      |
 *     \______________________/   low.y
 */
export function strip(length: number, low: StripSide, high: StripSide): Strip {
  const half = length / 2;
  const land = Math.max(SHORTEST_LAND, length / 4);
  const side = ({ y, lands }: StripSide, inwards: 1 | -1): Point[] =>
    lands && length >= SHORTEST_WITH_LANDS
      ? [
          { x: -half, y },
          { x: -half + land, y },
          { x: -half + land + RECESS, y: y + inwards * RECESS },
          { x: half - land - RECESS, y: y + inwards * RECESS },
          { x: half - land, y },
          { x: half, y },
        ]
      : [
          { x: -half, y },
          { x: half, y },
        ];
  const lowPoints = side(low, 1);
  const highPoints = side(high, -1).toReversed();
  const count = lowPoints.length;
  const total = count + highPoints.length;
  const corners: readonly (readonly [number, number])[] = [
    [total - 1, high.corner],
    [count, high.corner],
    [count - 1, low.corner],
    [0, low.corner],
  ];
  const outline = corners.reduce(
    (ring, [index, radius]) => fillet(ring, index, radius),
    polygon([...lowPoints, ...highPoints]),
  );
  const lines = ({ y, lands, corner }: StripSide): Strip['low'] => {
    const [from, to] = [
      { x: -half + corner, y },
      { x: half - corner, y },
    ];
    return lands && length >= SHORTEST_WITH_LANDS
      ? [
          [from, { x: -half + land, y }],
          [{ x: half - land, y }, to],
        ]
      : [[from, to]];
  };
  return { outline, low: lines(low), high: lines(high) };
}
