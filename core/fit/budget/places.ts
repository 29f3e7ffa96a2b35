import type { Edge } from '../../order/types.ts';
import type { DrawerFit } from '../types.ts';

/** A corner of the front, named for someone facing the closed cabinet. */
export type FrontCorner = 'topLeft' | 'topRight' | 'bottomLeft' | 'bottomRight';

export const FRONT_CORNERS: readonly FrontCorner[] = ['topLeft', 'topRight', 'bottomLeft', 'bottomRight'];

/** A move of the front that the height and side adjusters make. mm; + is up, and to the cabinet's right. */
export interface Move {
  readonly side: number;
  readonly heightLeft: number;
  readonly heightRight: number;
}

/** One of the eight places where a gap is measured: an edge of the front at one of its corners. */
export interface GapPlace {
  readonly edge: Edge;
  readonly corner: FrontCorner;
  /** How much the gap grows for each mm of a move. */
  readonly by: Move;
}

type Front = Pick<DrawerFit, 'overhang' | 'frontW' | 'frontH' | 'boxW'>;

/**
 * The gaps at the corners as linear functions of a move, for turns that are small.
 *
 * The adjusters lift the box at its two sides; a difference turns it by (right - left) / box width about the
 * slide, at the box's lower edge. Someone facing the closed cabinet sees x to the right and y up from the
 * lower left corner of the box, so a corner at (x, y) moves
 *
 *     up     left (1 - x / box width) + right x / box width
 *     right  side - (right - left) y / box width
 *
 * and the left and bottom gaps grow with it, the right and top ones shrink.
 */
export function gapPlaces({ overhang, frontW, frontH, boxW }: Front): readonly GapPlace[] {
  // A front that is a little wider than its place is dialled in with half of that at either side.
  const over = (frontW - boxW - overhang.left - overhang.right) / 2;
  return FRONT_CORNERS.flatMap((corner) => {
    const isLeft = corner.endsWith('Left');
    const isTop = corner.startsWith('top');
    const across = (isLeft ? -overhang.left - over : boxW + overhang.right + over) / boxW;
    const up = (isTop ? frontH - overhang.bottom : -overhang.bottom) / boxW;
    const side = signed(isLeft ? 1 : -1, { side: 1, heightLeft: up, heightRight: -up });
    const end = signed(isTop ? -1 : 1, { side: 0, heightLeft: 1 - across, heightRight: across });
    return [
      { edge: isLeft ? 'left' : 'right', corner, by: side },
      { edge: isTop ? 'top' : 'bottom', corner, by: end },
    ] as const;
  });
}

const signed = (sign: 1 | -1, { side, heightLeft, heightRight }: Move): Move => ({
  side: sign * side,
  heightLeft: sign * heightLeft,
  heightRight: sign * heightRight,
});

/** How much the gap at a place grows with a move, mm. */
export const gapGrowth = ({ by }: GapPlace, move: Move): number =>
  by.side * move.side + by.heightLeft * move.heightLeft + by.heightRight * move.heightRight;
