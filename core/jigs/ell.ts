import { fillet } from '../geometry/fillet.ts';
import { polygon } from '../geometry/polygon.ts';
import type { Point, RingContour } from '../geometry/types.ts';
import { CRISP_CORNER, DUST_RELIEF, LIP_WIDTH, SOFT_CORNER } from './proportions.ts';
import type { Contact, Pocket } from './types.ts';

/** An L about an inside corner, its arms along x and y from the outer corner at -lip width. */
export function ell(arms: Point, inside: Point): RingContour {
  const ring = polygon([
    { x: -LIP_WIDTH, y: -LIP_WIDTH },
    { x: arms.x, y: -LIP_WIDTH },
    { x: arms.x, y: inside.y },
    inside,
    { x: inside.x, y: arms.y },
    { x: -LIP_WIDTH, y: arms.y },
  ]);
  // From the last corner to the first, so that the indices of those to come stay true.
  const radii: readonly (readonly [number, number])[] = [
    [5, SOFT_CORNER],
    [4, CRISP_CORNER],
    [2, CRISP_CORNER],
    [1, SOFT_CORNER],
    [0, SOFT_CORNER],
  ];
  return radii.reduce((rounded, [corner, radius]) => fillet(rounded, corner, radius), ring);
}

/** The two straight stretches of an L's inside, clear of its relief and of the rounding at its ends. */
export const alongArms = (
  piece: string,
  on: Contact['on'],
  { x, y }: Point,
  arms: Point,
  past: number,
): readonly Contact[] => [
  {
    piece,
    on,
    line: [
      { x: x + past, y },
      { x: arms.x - CRISP_CORNER, y },
    ],
  },
  {
    piece,
    on,
    line: [
      { x, y: arms.y - CRISP_CORNER },
      { x, y: y + past },
    ],
  },
];

/** A rebate along the tops of both working edges; the tool runs out past them. */
export const ellRabbet = (arms: Point, tool: number): Pocket => ({
  contour: polygon([
    { x: -DUST_RELIEF, y: -DUST_RELIEF },
    { x: arms.x + tool, y: -DUST_RELIEF },
    { x: arms.x + tool, y: tool },
    { x: tool, y: tool },
    { x: tool, y: arms.y + tool },
    { x: -DUST_RELIEF, y: arms.y + tool },
  ]),
  depth: DUST_RELIEF,
});
