import type { DrawerFit } from '../fit/types.ts';
import type { EdgeSet } from './choose-seat.ts';

/** An upright rectangle in the back view, mm. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/**
 * Where the box stands on the back of the front: against what the jig sets, and otherwise where its fit has it.
 * A box that is set at neither side is in the middle of what a front of another width than derived leaves.
 */
export function boxPlace(fit: DrawerFit, sets: readonly EdgeSet[]): Rect {
  const { frontW, frontH, boxW, boxH, overhang } = fit;
  const set = (edge: EdgeSet['edge']) => sets.find((one) => one.edge === edge)?.overhang;
  const [left, right, top] = [set('left'), set('right'), set('top')];
  const middle = overhang.right + (frontW - boxW - overhang.left - overhang.right) / 2;
  return {
    x: right ?? (left === undefined ? middle : frontW - left - boxW),
    y: set('bottom') ?? (top === undefined ? overhang.bottom : frontH - top - boxH),
    w: boxW,
    h: boxH,
  };
}
