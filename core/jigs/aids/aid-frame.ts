import { boxWalls } from '../../fastening/box-walls.ts';
import { cornerFrame } from '../../fastening/corner-frame.ts';
import type { Corner } from '../../fastening/types.ts';
import type { DrawerFit } from '../../fit/types.ts';
import type { ShopStandard } from '../../rules/types.ts';
import type { Pose } from '../types.ts';
import { vec } from '../vec3.ts';

/**
 * The frame `box corner` in the back view: its origin where three faces meet, the inside of the box front, the
 * inside of the box's side on the corner's hand, and the upper face of the box's bottom (end `bottom`) or the
 * upper edge of the box front (end `top`). y runs inwards from the third face, z into the box; x runs inwards
 * from the side at the right bottom and the left top, and outwards at the other two, whose aids are mirrored.
 */
export function boxCornerFrame(fit: DrawerFit, corner: Corner, standard: ShopStandard): Pose {
  const walls = boxWalls(fit, standard);
  const { origin } = cornerFrame(walls, corner);
  return corner.end === 'bottom'
    ? { origin: vec(origin.x, origin.y + walls.floor, walls.front), u: vec(1, 0), v: vec(0, 1) }
    : { origin: vec(origin.x, origin.y, walls.front), u: vec(-1, 0), v: vec(0, -1) };
}

/**
 * The frame `top corner` in the back view: its origin at the top corner of the face outline on the aid's hand, at
 * the back of the front, y inwards from the top edge; x inwards from the left edge, outwards from the right one.
 */
export const topCornerFrame = (fit: DrawerFit, hand: 'left' | 'right'): Pose => ({
  origin: vec(hand === 'left' ? fit.frontW : 0, fit.frontH),
  u: vec(-1, 0),
  v: vec(0, -1),
});
