import type { Vec3 } from '../jigs/types.ts';
import type { Group, Step } from './types.ts';
import { add, ORIGIN, scale } from './vec.ts';

/**
 * Where a group is on its way in a step, away from its seat: at its start for a share of 0, at its end for 1.
 * Without a step everything is seated.
 */
export function moveOf(group: Group, step: Step | null, share: number): Vec3 {
  const move = step?.moves[group];
  return move === undefined ? ORIGIN : add(scale(move.from, 1 - share), scale(move.to, share));
}

/** How far a solid is from its seat, drawn apart by a share from 0 to 1 and moved with its group. */
export const offsetOf = (
  { group, apart }: { readonly group: Group; readonly apart: Vec3 },
  step: Step | null,
  share: number,
  apartShare: number,
): Vec3 => add(scale(apart, apartShare), moveOf(group, step, share));
