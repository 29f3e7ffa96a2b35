import { circle } from '../geometry/circle.ts';
import type { Jig, Pose, Seat, Vec3 } from '../jigs/types.ts';
import { cross, inPose } from '../jigs/vec3.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import { polygonOf } from './polygon-of.ts';
import type { Solid } from './types.ts';
import { add, AXES, dot, ORIGIN, scale } from './vec.ts';

/** Holes that stand in one line through several sheets, in the seat's frame. */
interface Bore {
  readonly middle: Vec3;
  readonly pose: Pose;
  readonly low: number;
  readonly high: number;
}

/** The round pins of a jig, which are bought: one through all the holes that stand in one line. */
export function pins(jig: Jig, seat: Seat, machine: MachineProfile): readonly Solid[] {
  const [first] = seat.poses;
  if (machine.joint !== 'pin' || first === undefined) return [];
  const axis = cross(first.pose.u, first.pose.v);
  const bores: Bore[] = [];
  for (const { piece, pose } of seat.poses) {
    for (const center of pinHoles(jig, piece)) {
      const ends = [0, machine.sheet.thickness].map((height) => dot(inPose(pose, center, height), axis));
      const [low, high] = [Math.min(...ends), Math.max(...ends)];
      const place = inPose(pose, center);
      const middle = add(place, scale(axis, -dot(place, axis)));
      const index = bores.findIndex((bore) => samePlace(bore.middle, middle));
      const known = bores[index];
      const bore = {
        middle,
        pose: first.pose,
        low: Math.min(low, known?.low ?? low),
        high: Math.max(high, known?.high ?? high),
      };
      bores.splice(index === -1 ? bores.length : index, 1, bore);
    }
  }
  return bores.map(({ middle, pose, low, high }, index) => ({
    id: `pin-${index + 1}`,
    name: `${jig.id} pin`,
    group: 'jig',
    material: 'pin',
    pose: { ...pose, origin: middle },
    layers: [
      {
        outline: polygonOf(circle({ x: 0, y: 0 }, machine.pinDiameter / 2)),
        holes: [],
        from: low,
        to: high,
      },
    ],
    lines: [],
    apart: ORIGIN,
    ghost: false,
  }));
}

const pinHoles = (jig: Jig, name: string) =>
  (jig.pieces.find((piece) => piece.name === name)?.holes ?? []).flatMap(({ contour, purpose }) =>
    purpose === 'joint' && contour.kind === 'circle' ? [contour.center] : [],
  );

const samePlace = (a: Vec3, b: Vec3): boolean =>
  AXES.every((axis) => Math.abs(a[axis] - b[axis]) < SAME_LENGTH);
