import type { Point } from '../geometry/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { hangHole } from './hang-hole.ts';
import { jointHoles, type JointPlaces } from './joint.ts';
import { LIP_MIDDLE } from './proportions.ts';
import type { Hole } from './types.ts';

/**
 * The joints of an L of lips, two along x and one along y, and its holes, with the one at its corner to hang it by.
 *
 * @param arms length of the arms of its plate along x and y from the corner of their working faces, mm
 */
export function ellJoints(
  arms: Point,
  machine: MachineProfile,
): { readonly places: JointPlaces; readonly holes: readonly Hole[] } {
  const places: JointPlaces = [
    { x: arms.x * 0.34, y: LIP_MIDDLE },
    { x: arms.x * 0.74, y: LIP_MIDDLE },
    // The narrowest key is the one that lies across its arm.
    { x: LIP_MIDDLE, y: arms.y * 0.62 },
  ];
  return { places, holes: [...jointHoles(places, machine), hangHole({ x: LIP_MIDDLE, y: LIP_MIDDLE })] };
}
