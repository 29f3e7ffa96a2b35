import type { Mesh, MeshPoint, MeshTriangle } from './types.ts';

type Corners = readonly [MeshPoint, MeshPoint, MeshPoint];

/** The corners of a triangle; throws RangeError for a number that has no position. */
export function cornersOf({ positions }: Mesh, [a, b, c]: MeshTriangle): Corners {
  const [p, q, r] = [positions[a], positions[b], positions[c]];
  if (p === undefined || q === undefined || r === undefined) {
    throw new RangeError(`cornersOf: triangle ${a}, ${b}, ${c} of ${positions.length} positions`);
  }
  return [p, q, r];
}

const minus = (a: MeshPoint, b: MeshPoint): MeshPoint => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

const cross = (a: MeshPoint, b: MeshPoint): MeshPoint => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Twice the area in mm², and the direction out of it, of length 1; 0, 0, 0 where there is no area. */
export function normalOf([a, b, c]: Corners): { readonly length: number; readonly unit: MeshPoint } {
  const across = cross(minus(b, a), minus(c, a));
  const length = Math.hypot(...across);
  return {
    length,
    unit: length === 0 ? [0, 0, 0] : [across[0] / length, across[1] / length, across[2] / length],
  };
}

/** mm³; negative where the triangles are turned inside out. */
export function volumeOf(mesh: Mesh): number {
  return mesh.triangles.reduce((sum, triangle) => {
    const [a, b, c] = cornersOf(mesh, triangle);
    const across = cross(a, b);
    return sum + (across[0] * c[0] + across[1] * c[1] + across[2] * c[2]) / 6;
  }, 0);
}
