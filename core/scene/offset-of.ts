import type { Vec3 } from '../jigs/types.ts';
import type { Group, Solid, Step } from './types.ts';
import { add, ORIGIN, scale } from './vec.ts';

/**
 * Where a group is on its way in a step, away from its seat: at its start for a share of 0, at its end for 1.
 * Without a step everything is seated.
 */
export function moveOf(group: Group, step: Step | null, share: number): Vec3 {
  const move = step?.moves[group];
  return move === undefined ? ORIGIN : add(scale(move.from, 1 - share), scale(move.to, share));
}

/** How far a solid is from its seat, drawn apart by a share from 0 to 1, moved with its group or sent in by itself. */
export const offsetOf = (
  { group, apart, travel = ORIGIN }: Pick<Solid, 'group' | 'apart' | 'travel'>,
  step: Step | null,
  share: number,
  apartShare: number,
): Vec3 => {
  const own = step?.sendsIn === group ? scale(travel, 1 - share) : ORIGIN;
  return [scale(apart, apartShare), moveOf(group, step, share), own].reduce(add);
};
