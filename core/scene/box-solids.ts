import type { DrawerFit } from '../fit/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import type { Rect } from './box-place.ts';
import type { Solid } from './types.ts';

/** mm. How deep the box is drawn: the order gives no depth, and a short box leaves the picture to the seat. */
export const DRAWN_DEPTH = 150;

/** mm. How far the box is lifted when the scene is drawn apart. */
const APART = 90;

/**
 * The box on the back of the front: sides from front to back, front and back between them, and the bottom
 * between all four. Its back is drawn as lines, so that one sees into it from above.
 */
export function boxSolids(
  fit: DrawerFit,
  { x, y, w, h }: Rect,
  { bottom: { raised, thickness } }: ShopStandard['box'],
): readonly Solid[] {
  const { boxSide, boxFront } = fit;
  const inner = w - 2 * boxSide;
  const wall = (id: string, name: string, rect: Rect, from: number, to: number, ghost = false): Solid => ({
    id: `box-${id}`,
    name,
    group: 'box',
    material: 'box',
    pose: {
      origin: { x: rect.x, y: rect.y, z: 0 },
      u: { x: 1, y: 0, z: 0 },
      v: { x: 0, y: 1, z: 0 },
    },
    layers: [
      {
        outline: [
          { x: 0, y: 0 },
          { x: rect.w, y: 0 },
          { x: rect.w, y: rect.h },
          { x: 0, y: rect.h },
        ],
        holes: [],
        from,
        to,
      },
    ],
    lines: [],
    apart: { x: 0, y: 0, z: APART },
    ghost,
  });
  const between = (rect: Partial<Rect>): Rect => ({ x: x + boxSide, y, w: inner, h, ...rect });
  const back = DRAWN_DEPTH - boxSide;
  const bottom = { y: y + raised.value, h: thickness.value };
  return [
    wall('right', "Box, side to the cabinet's right", { x, y, w: boxSide, h }, 0, DRAWN_DEPTH),
    wall('left', "Box, side to the cabinet's left", { x: x + w - boxSide, y, w: boxSide, h }, 0, DRAWN_DEPTH),
    // A box narrower than its two sides, or lower than its bottom, has errors; what there is of it is drawn.
    ...(inner > 0
      ? [
          wall('front', 'Box, front', between({}), 0, boxFront),
          wall('back', 'Box, back', between({}), back, DRAWN_DEPTH, true),
          ...(h > raised.value + thickness.value
            ? [wall('bottom', 'Box, bottom', between(bottom), boxFront, back)]
            : []),
        ]
      : []),
  ];
}
