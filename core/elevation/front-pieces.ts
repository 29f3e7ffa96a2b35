import type { Placed } from '../fit/types.ts';
import { frameWidths } from '../order/frame-widths.ts';
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
  const { stile, rail } = frameWidths(construction);
  const [inner, high] = [w - 2 * stile, h - 2 * rail];
  if (inner <= 0 || high <= 0) return [];
  return [
    { x, y, w: stile, h },
    { x: x + w - stile, y, w: stile, h },
    { x: x + stile, y, w: inner, h: rail },
    { x: x + stile, y: y + h - rail, w: inner, h: rail },
    { x: x + stile, y: y + rail, w: inner, h: high },
  ];
}
