import type { Edge } from '../order/types.ts';
import type { Pose } from './types.ts';
import { vec } from './vec3.ts';

/**
 * The frame of a front's edge in the back view: origin at the middle of the edge's face outline, u along
 * the edge, v inwards, u x v out of the back. All four are rotations of one another, none is mirrored.
 *
 * The front lies face down, so the cabinet's left edge is at the right of the back view (x = front width).
 *
 * @param frontW mm
 * @param frontH mm
 */
export function edgeFrame(edge: Edge, frontW: number, frontH: number): Pose {
  const frames: Readonly<Record<Edge, Pose>> = {
    bottom: { origin: vec(frontW / 2, 0), u: vec(1, 0), v: vec(0, 1) },
    top: { origin: vec(frontW / 2, frontH), u: vec(-1, 0), v: vec(0, -1) },
    right: { origin: vec(0, frontH / 2), u: vec(0, -1), v: vec(1, 0) },
    left: { origin: vec(frontW, frontH / 2), u: vec(0, 1), v: vec(-1, 0) },
  };
  return frames[edge];
}
