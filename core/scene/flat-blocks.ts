import type { Vec3 } from '../jigs/types.ts';
import { cross } from '../jigs/vec3.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import { AXES, dot, type Block } from './vec.ts';

/** What two blocks share, be it flat; null when they are apart. */
export function common(face: Block, target: Block): Block | null {
  const min = { ...face.min };
  const max = { ...face.max };
  for (const axis of AXES) {
    // A face lies on the target's side to within rounding noise; it keeps its own place there.
    if (face.max[axis] - face.min[axis] < SAME_LENGTH) {
      const apart = Math.max(target.min[axis] - face.max[axis], face.min[axis] - target.max[axis]);
      if (apart > SAME_LENGTH) return null;
      continue;
    }
    min[axis] = Math.max(face.min[axis], target.min[axis]);
    max[axis] = Math.min(face.max[axis], target.max[axis]);
    if (max[axis] - min[axis] < SAME_LENGTH) return null;
  }
  return { min, max };
}

/** The corners of a flat block, counter-clockwise as seen against its normal. */
export function rim({ min, max }: Block, normal: Vec3): readonly Vec3[] {
  const [a, b] = AXES.filter((axis) => Math.abs(normal[axis]) < 0.5);
  if (a === undefined || b === undefined) return [];
  const corners = [min, { ...min, [a]: max[a] }, max, { ...min, [b]: max[b] }].map((corner) => ({
    ...corner,
  }));
  const [p, q] = [corners[1] ?? min, corners[3] ?? min];
  const turn = cross(
    { x: p.x - min.x, y: p.y - min.y, z: p.z - min.z },
    { x: q.x - min.x, y: q.y - min.y, z: q.z - min.z },
  );
  return dot(turn, normal) < 0 ? corners.toReversed() : corners;
}
