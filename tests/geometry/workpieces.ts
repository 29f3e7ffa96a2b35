import { circle } from '../../core/geometry/circle.ts';
import { fillet } from '../../core/geometry/fillet.ts';
import { polygon } from '../../core/geometry/polygon.ts';
import { roundedRectangle } from '../../core/geometry/rounded-rectangle.ts';
import type { CircleContour, Point, RingContour } from '../../core/geometry/types.ts';

/** Fixed workpieces of known size, for tests and benchmarks. */

/** A 300 x 120 plate with eight notches, four along each long side, and its four corners rounded: 40 segments. */
export function plateOf40(): RingContour {
  const along = (y: number, into: number, starts: readonly number[]): readonly Point[] =>
    starts.flatMap((x) => {
      const to = x + (into > 0 ? 20 : -20);
      return [
        { x, y },
        { x, y: y + into },
        { x: to, y: y + into },
        { x: to, y },
      ];
    });
  const sharp = polygon([
    { x: 0, y: 0 },
    ...along(0, 15, [35, 105, 175, 245]),
    { x: 300, y: 0 },
    { x: 300, y: 120 },
    ...along(120, -15, [265, 195, 125, 55]),
    { x: 0, y: 120 },
  ]);
  return [35, 18, 17, 0].filter((corner) => corner !== 35).concat(19).sort((a, b) => b - a).reduce(
    (ring, corner) => fillet(ring, corner, 6),
    sharp,
  );
}
