import type { Point } from '../geometry/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { keyWidth, type JointPlaces } from './joint.ts';
import type { Pose, Seat } from './types.ts';

type Poses = Seat['poses'];

const ALONG = { x: 1, y: 0, z: 0 };
const INWARDS = { x: 0, y: 1, z: 0 };
const OUT = { x: 0, y: 0, z: 1 };

/** A plate that lies on the back of the front, drawn face up. */
export const FLAT: Pose = { origin: { x: 0, y: 0, z: 0 }, u: ALONG, v: INWARDS };

/** The pose moved along the back of the front, mm. */
export const shifted = (pose: Pose, by: Point): Pose => ({
  ...pose,
  origin: { x: pose.origin.x + by.x, y: pose.origin.y + by.y, z: pose.origin.z },
});

/** Layers below the plate, the first one next to it. */
export const lipPoses = (layerNames: readonly string[], thickness: number): Poses =>
  layerNames.map((piece, index) => ({
    piece,
    pose: { ...FLAT, origin: { x: 0, y: 0, z: -thickness * (index + 1) } },
  }));

/** Keys upright in their slots, standing on the lowest layer's underside at z (mm). */
export function keyPoses(prefix: string, places: JointPlaces, z: number, machine: MachineProfile): Poses {
  if (machine.joint === 'pin') return [];
  return places.map(({ x, y }, index) => ({
    piece: `${prefix}key-${keyWidth(index)}`,
    // u x v points back along -y, so the key stands half its thickness inside its place.
    pose: { origin: { x, y: y + machine.sheet.thickness / 2, z }, u: ALONG, v: OUT },
  }));
}
