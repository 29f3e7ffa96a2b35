import type { DrawerFit } from '../fit/types.ts';
import type { ShopStandard } from '../rules/types.ts';

/** The box on the back of the front, back view; lengths in mm, z out of the back of the front. */
export interface BoxWalls {
  /** The outside: the cabinet's right is at x = 0, so `left` is the larger x. */
  readonly right: number;
  readonly left: number;
  readonly bottom: number;
  readonly top: number;
  readonly side: number;
  readonly front: number;
  /** Between the inside faces of the sides. */
  readonly innerWidth: number;
  readonly height: number;
  /** From the lower edge of the sides to the upper face of the bottom. */
  readonly floor: number;
  /** z of the inside face of the box's back, which is as thick as its sides. */
  readonly back: number;
}

/**
 * The walls of a drawer's box where its fit has it: in the middle of what a front of another width than derived
 * leaves, like the seat that jigs set.
 */
export function boxWalls(fit: DrawerFit, standard: ShopStandard): BoxWalls {
  const { frontW, boxW, boxH, boxSide, boxFront, overhang, drawer } = fit;
  const right = overhang.right + (frontW - boxW - overhang.left - overhang.right) / 2;
  const { bottom, depth } = standard.box;
  return {
    right,
    left: right + boxW,
    bottom: overhang.bottom,
    top: overhang.bottom + boxH,
    side: boxSide,
    front: boxFront,
    innerWidth: boxW - 2 * boxSide,
    height: boxH,
    floor: bottom.raised.value + bottom.thickness.value,
    back: (drawer.boxD ?? depth.value) - boxSide,
  };
}
