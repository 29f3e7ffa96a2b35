import type { Point } from '../geometry/types.ts';
import type { Pose, Vec3 } from './types.ts';

export const vec = (x: number, y: number, z = 0): Vec3 => ({ x, y, z });

export const cross = (a: Vec3, b: Vec3): Vec3 => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});

/** A point of a piece, at a height above its lower face (mm), where its pose puts it. */
export function inPose(pose: Pose, point: Point, height = 0): Vec3 {
  const w = cross(pose.u, pose.v);
  const at = (axis: 'x' | 'y' | 'z') =>
    pose.origin[axis] + point.x * pose.u[axis] + point.y * pose.v[axis] + height * w[axis];
  return { x: at('x'), y: at('y'), z: at('z') };
}

/** The pose `inner`, given in the frame `outer`, as seen from where `outer` is given. */
export function compose(outer: Pose, inner: Pose): Pose {
  const turn = (v: Vec3): Vec3 => {
    const from = inPose({ ...outer, origin: { x: 0, y: 0, z: 0 } }, v, v.z);
    return from;
  };
  return {
    origin: inPose(outer, inner.origin, inner.origin.z),
    u: turn(inner.u),
    v: turn(inner.v),
  };
}
