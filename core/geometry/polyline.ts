import { SHORTEST_SEGMENT } from '../units/tolerances.ts';
import type { Chain } from './chain.ts';
import type { RingContour, Vertex } from './types.ts';
import { distance } from './vector.ts';

/** A chain as a ring of straight sides, without sides too short to export. */
export function polyline({ points }: Chain): RingContour {
  const vertices: Vertex[] = [];
  for (const { x, y } of points) {
    const last = vertices.at(-1);
    if (last === undefined || distance(last, { x, y }) >= SHORTEST_SEGMENT) vertices.push({ x, y, bulge: 0 });
  }
  const [first, last] = [vertices[0], vertices.at(-1)];
  if (
    first !== undefined &&
    last !== undefined &&
    vertices.length > 3 &&
    distance(first, last) < SHORTEST_SEGMENT
  ) {
    vertices.pop();
  }
  return { kind: 'ring', vertices };
}
