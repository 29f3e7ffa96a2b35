import type { Vec3 } from '../jigs/types.ts';
import { inPose } from '../jigs/vec3.ts';
import type { Solid } from './types.ts';

/** All corners of a solid where it is seated; holes are left out, as they lie inside. */
export const solidPoints = ({ pose, layers }: Solid): readonly Vec3[] =>
  layers.flatMap(({ outline, top = outline, from, to }) => [
    ...outline.map((point) => inPose(pose, point, from)),
    ...top.map((point) => inPose(pose, point, to)),
  ]);
