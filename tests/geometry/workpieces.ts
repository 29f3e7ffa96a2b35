import { circle } from '../../core/geometry/circle.ts';
import { fillet } from '../../core/geometry/fillet.ts';
import { polygon } from '../../core/geometry/polygon.ts';
import { roundedRectangle } from './rounded-rectangle.ts';
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
  return [35, 18, 17, 0].reduce((ring, corner) => fillet(ring, corner, 6), sharp);
}

/** Ten bores of 8 mm through it. */
export const tenHoles: readonly CircleContour[] = Array.from({ length: 10 }, (_, index) =>
  circle({ x: 20 + 29 * index, y: 60 }, 4),
);

/** Twenty slots of 24 x 6 mm: ten across the holes' lower edges, ten that stand free above them. */
export const twentySlots: readonly RingContour[] = Array.from({ length: 20 }, (_, index) =>
  roundedRectangle(24, 6, 3, { x: 8 + 29 * (index % 10), y: index < 10 ? 52 : 80 }),
);

/** A comb of 161 notches 3 mm wide and 20 mm deep every 6 mm: 648 segments, all lines. */
export const combOf648 = (): RingContour =>
  polygon([
    { x: 0, y: 0 },
    { x: 972, y: 0 },
    { x: 972, y: 40 },
    ...Array.from({ length: 161 }, (_, index) => 966 - 6 * index).flatMap((x) => [
      { x, y: 40 },
      { x, y: 20 },
      { x: x - 3, y: 20 },
      { x: x - 3, y: 40 },
    ]),
    { x: 0, y: 40 },
  ]);

/** A plate of twenty corners, every one rounded: 20 lines and 20 tangent arcs. */
export function roundedPlateOf40(): RingContour {
  const sharp = polygon(
    [
      [0, 0],
      [60, 0],
      [60, 20],
      [90, 20],
      [90, 0],
      [150, 0],
      [150, 25],
      [180, 25],
      [180, 0],
      [240, 0],
      [240, 120],
      [180, 120],
      [180, 95],
      [150, 95],
      [150, 120],
      [90, 120],
      [90, 90],
      [60, 90],
      [60, 120],
      [0, 120],
    ].map(([x = 0, y = 0]) => ({ x, y })),
  );
  return Array.from({ length: 20 }, (_, index) => 19 - index).reduce(
    (ring, corner) => fillet(ring, corner, 5),
    sharp,
  );
}

/** The corners, in their order, of the outline of which makerjs 0.19.2 loses the one 36 mm further in. */
export const SEVEN_POINTS: readonly Point[] = [
  [36, 504],
  [540, 504],
  [576, 360],
  [756, 360],
  [864, 144],
  [864, 36],
  [36, 36],
].map(([x = 0, y = 0]) => ({ x, y }));

export const SEVEN_SIDES: RingContour = polygon(SEVEN_POINTS);
