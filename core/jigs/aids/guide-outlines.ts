import { fillet } from '../../geometry/fillet.ts';
import { polygon } from '../../geometry/polygon.ts';
import { translate } from '../../geometry/transform.ts';
import type { Point, RingContour } from '../../geometry/types.ts';
import { CRISP_CORNER, DUST_RELIEF, LIP_WIDTH, RECESS, SIGHT, SOFT_CORNER } from '../proportions.ts';
import { roundCorners } from '../round-corners.ts';
import { strip } from '../strip.ts';
import type { GuideLayout } from './guide-layout.ts';

// All in mm; common practice, no source.

/** Off the corner that goes into the box's inside corner, for glue that was squeezed out there. */
const GLUE_CHAMFER = 3;

/** How far the part of a guide above the box's top edge stands back from the side. */
const PAST_SIDE = 2;

/** Of the lip from the box's side, where front and side are joined. */
const LIP_START = 4;

/** Least length of the two lands that a guide bears on. */
const LAND = 15;

type Line = readonly [Point, Point];

/** An outline, and the straight stretches of it that touch the side of the box and its bottom. */
export interface GuideOutline {
  readonly outline: RingContour;
  readonly onSide: readonly Line[];
  readonly onBottom: readonly Line[];
}

/**
 * One layer of a guide for a bottom corner. It bears on two lands along the bottom; the lowest layer stands back
 * from both faces, where glue and dust lie.
 *
 *     |‾‾‾‾‾‾‾‾‾‾‾‾‾‾‾‾‾‾‾|
 *     |                   |
 *      \___  _________  __|
 *          \/         \/      <- recess, between two lands
 */
export function bottomLayer({ length, high }: GuideLayout, back: boolean): GuideOutline {
  const off = back ? DUST_RELIEF : 0;
  const land = Math.max(LAND, length / 4);
  const start = off + GLUE_CHAMFER;
  const corners = [
    { x: start, y: off },
    { x: start + land, y: off },
    { x: start + land + RECESS, y: off + RECESS },
    { x: length - land - RECESS, y: off + RECESS },
    { x: length - land, y: off },
    { x: length, y: off },
    { x: length, y: high },
    { x: off, y: high },
    { x: off, y: start },
  ];
  return {
    outline: [[7, CRISP_CORNER] as const, [6, SOFT_CORNER] as const, [5, CRISP_CORNER] as const].reduce(
      (ring, [corner, radius]) => fillet(ring, corner, radius),
      polygon(corners),
    ),
    onSide: [
      [
        { x: off, y: high - CRISP_CORNER },
        { x: off, y: start },
      ],
    ],
    onBottom: [
      [
        { x: start, y: off },
        { x: start + land, y: off },
      ],
      [
        { x: length - land, y: off },
        { x: length - CRISP_CORNER, y: off },
      ],
    ],
  };
}

/** One layer of a guide for a top corner; above the box's top edge, at y = 0, it stands back from the side. */
export function topLayer({ length, low, high }: GuideLayout, back: boolean): GuideOutline {
  const off = back ? DUST_RELIEF : 0;
  const corners = [
    { x: off + PAST_SIDE, y: low },
    { x: length, y: low },
    { x: length, y: high },
    { x: off, y: high },
    { x: off, y: GLUE_CHAMFER },
    { x: off + PAST_SIDE, y: GLUE_CHAMFER - PAST_SIDE },
  ];
  return {
    outline: roundCorners(roundCorners(polygon(corners), [3], CRISP_CORNER), [0, 1, 2], SOFT_CORNER),
    onSide: [
      [
        { x: off, y: high - CRISP_CORNER },
        { x: off, y: GLUE_CHAMFER },
      ],
    ],
    onBottom: [],
  };
}

/** The lip that hooks over the top edge of the box front, its face at y = 0; its far end stands out to be seen. */
export function topLip({ length }: GuideLayout, dust: boolean) {
  const lipLength = length + SIGHT - LIP_START;
  const by = { x: LIP_START + lipLength / 2, y: 0 };
  const { outline, high } = strip(
    lipLength,
    { y: -LIP_WIDTH, corner: SOFT_CORNER, lands: false },
    { y: dust ? -DUST_RELIEF : 0, corner: CRISP_CORNER, lands: !dust },
  );
  const moved = ({ x, y }: Point): Point => ({ x: x + by.x, y });
  return {
    outline: translate(outline, by),
    onTop: high.map(([from, to]): Line => [moved(from), moved(to)]),
    from: LIP_START,
    to: LIP_START + lipLength,
  };
}
