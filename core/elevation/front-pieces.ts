import type { Placed } from '../fit/types.ts';
import type { FrontConstruction } from '../order/types.ts';

/**
 * The pieces of a five-piece front: two stiles through the whole height, two rails between them, and the
 * panel as far as it is seen. Empty for a slab, or where the frame leaves no room for a panel.
 *
 *     +--+---------+--+
 *     |  |  rail   |  |
 *     |  +---------+  |
 *     |  |  panel  |  |
 *     |  +---------+  |
 *     |  |  rail   |  |
 *     +--+---------+--+
 */
export function frontPieces({ x, y, w, h }: Placed, construction: FrontConstruction): readonly Placed[] {
  if (construction.kind === 'slab') return [];
  const m = construction.memberWidth;
  if (2 * m >= Math.min(w, h)) return [];
  const inner = w - 2 * m;
  return [
    { x, y, w: m, h },
    { x: x + w - m, y, w: m, h },
    { x: x + m, y, w: inner, h: m },
    { x: x + m, y: y + h - m, w: inner, h: m },
    { x: x + m, y: y + m, w: inner, h: h - 2 * m },
  ];
}
