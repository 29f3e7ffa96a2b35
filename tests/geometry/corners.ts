import * as fc from 'fast-check';
import type { Point, RingContour, Vertex } from '../../core/geometry/types.ts';

/**
 * Inside corners of any angle between straight and curved walls. The corner stands at the origin, the void opens
 * upwards along +y, and the bisector of the walls' tangents is +y by construction.
 *
 *     ───╲ void ╱───
 *         ╲    ╱         opening: the angle between the walls, in radians
 *     mat. ╲  ╱  erial
 *           ╲╱
 */
export interface Corner {
  readonly opening: number;
  /** Signed curvature of each wall in 1/mm, walked away from the corner, left turns positive. */
  readonly bendRight: number;
  readonly bendLeft: number;
}

export const corners: fc.Arbitrary<Corner> = fc.record({
  opening: fc.double({ min: 0.5, max: 2.9, noNaN: true }),
  bendRight: fc.oneof(fc.constant(0), fc.double({ min: -0.005, max: 0.005, noNaN: true })),
  bendLeft: fc.oneof(fc.constant(0), fc.double({ min: -0.005, max: 0.005, noNaN: true })),
});

/** mm of wall on either side of the corner. */
const WALL = 40;

/** The end of a wall that starts at the origin in a direction and turns by its curvature, and its bulge. */
function wall(direction: number, bend: number): { readonly end: Point; readonly bulge: number } {
  const turn = bend * WALL;
  const chord = Math.abs(turn) < 1e-9 ? WALL : (2 * Math.sin(turn / 2)) / bend;
  const heading = direction + turn / 2;
  return {
    end: { x: chord * Math.cos(heading), y: chord * Math.sin(heading) },
    bulge: Math.abs(bend) < 1e-6 ? 0 : Math.tan(turn / 4),
  };
}

/**
 * The corner as a notch in the top of a counter-clockwise board, or as the bottom of a clockwise hole: the
 * material is on the left of the travel either way.
 */
export function ringWith({ opening, bendRight, bendLeft }: Corner, kind: 'notch' | 'hole'): RingContour {
  const right = wall(Math.PI / 2 - opening / 2, bendRight);
  const left = wall(Math.PI / 2 + opening / 2, bendLeft);
  const corner: Vertex = { x: 0, y: 0, bulge: left.bulge };
  // The right wall is walked towards the corner, so its turn changes sign.
  const mouth: readonly Vertex[] = [
    { ...right.end, bulge: -right.bulge || 0 },
    corner,
    { ...left.end, bulge: 0 },
  ];
  const at = (x: number, y: number): Vertex => ({ x, y, bulge: 0 });
  const high = 45 + Math.max(right.end.y, left.end.y);
  return {
    kind: 'ring',
    vertices:
      kind === 'hole'
        ? [...mouth, at(left.end.x, high), at(right.end.x, high)]
        : [...mouth, at(-90, left.end.y), at(-90, -90), at(90, -90), at(90, right.end.y)],
  };
}
