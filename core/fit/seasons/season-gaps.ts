import type { Edge } from '../../order/types.ts';
import type { DrawerFit } from '../types.ts';

/** How much a front grows, mm; - shrinks. */
export interface Growth {
  readonly width: number;
  readonly height: number;
}

/**
 * How much each edge moves outwards when the front grows: it is screwed to its box, so it grows from the
 * middle of the box, each edge by its share of the way (common practice, no source).
 */
export function edgeGrowth({ overhang, boxW, boxH }: DrawerFit, growth: Growth): Record<Edge, number> {
  const share = (near: number, far: number, box: number) => (box / 2 + near) / (box + near + far);
  const left = share(overhang.left, overhang.right, boxW);
  const bottom = share(overhang.bottom, overhang.top, boxH);
  return {
    left: growth.width * left,
    right: growth.width * (1 - left),
    top: growth.height * (1 - bottom),
    bottom: growth.height * bottom,
  };
}

/**
 * How much the gap of an edge closes. The opening keeps its size; at a shared edge the other front is taken
 * to grow as much as this one.
 */
export const gapClosing = (
  edge: Edge,
  { rules }: DrawerFit,
  outward: Readonly<Record<Edge, number>>,
): number => (rules.edges[edge].condition.kind === 'share' ? 2 : 1) * outward[edge];
