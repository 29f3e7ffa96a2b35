import type { Edge } from '../order/types.ts';

interface Allowances {
  /** Overlay of each edge, mm; -gap for an inset edge. */
  readonly overlay: Readonly<Record<Edge, number>>;
  readonly runningClearance: number;
  readonly lift: number;
  readonly startLow: number;
  readonly frontH: number;
  readonly boxH: number;
}

/**
 * The four overhangs in mm, by the design's equations: a side is running clearance plus overlay, the
 * bottom is lift plus overlay plus start-low allowance, and the top is what is left of the front.
 *
 *     +--------------- front ---------------+
 *     |        overhang(top)                |
 *     |   +---------- box ----------+       |
 *     |   |                         |<----->| overhang(side)
 *     |   +-------------------------+       |
 *     |        overhang(bottom)             |
 *     +-------------------------------------+
 *
 * @example inset, gap 3/32 in, clearance 3/16 in: a side overhang of 3/32 in
 */
export function overhangs(of: Allowances): Record<Edge, number> {
  const bottom = of.lift + of.overlay.bottom + of.startLow;
  return {
    left: of.runningClearance + of.overlay.left,
    right: of.runningClearance + of.overlay.right,
    top: of.frontH - of.boxH - bottom,
    bottom,
  };
}
