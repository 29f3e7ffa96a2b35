import { edgeFrame } from '../jigs/edge-frame.ts';
import type { Vec3 } from '../jigs/types.ts';
import type { Edge } from '../order/types.ts';
import type { Section } from './types.ts';
import type { Block } from './vec.ts';

/** The plane across an edge through the middle of the jig; it can be moved from end to end of the jig. */
export function sectionAcross(edge: Edge, { min, max }: Block, middle: Vec3): Section {
  const { u } = edgeFrame(edge, 0, 0);
  const axis = Math.abs(u.x) > 0.5 ? 'x' : 'y';
  return { axis, side: u[axis] > 0 ? 1 : -1, at: middle[axis], from: min[axis], to: max[axis] };
}
