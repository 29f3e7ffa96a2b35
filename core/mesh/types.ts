/** A closed surface of triangles, to print. */
export interface Mesh {
  /** mm, each in single precision, as STL holds it; no two are the same place. */
  readonly positions: readonly MeshPoint[];
  /** Numbers of three positions each, counter-clockwise seen from outside. */
  readonly triangles: readonly MeshTriangle[];
}

export type MeshPoint = readonly [x: number, y: number, z: number];

export type MeshTriangle = readonly [a: number, b: number, c: number];
