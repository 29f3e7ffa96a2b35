import Module from 'manifold-3d';
import type { Manifold, Mat4, SimplePolygon } from 'manifold-3d';
import type { Pose, Vec3 } from '../../core/jigs/types.ts';
import type { Group, Layer, SeatScene, Solid } from '../../core/scene/types.ts';

const library = await Module();
library.setup();

export type { Manifold };

const ring = (points: Layer['outline']): SimplePolygon => points.map(({ x, y }) => [x, y]);

/** A layer as a solid of the geometry library; a tapered one shrinks about its middle. */
function layerManifold({ outline, top, holes, from, to }: Layer): Manifold {
  if (top === undefined) {
    return library.Manifold.extrude([ring(outline), ...holes.map(ring)], to - from).translate([0, 0, from]);
  }
  const low = ring(outline);
  const high = ring(top);
  return library.Manifold.hull([
    ...low.map(([x, y]): [number, number, number] => [x, y, from]),
    ...high.map(([x, y]): [number, number, number] => [x, y, to]),
  ]);
}

/** Turns and moves what is drawn in its own coordinates, column by column. */
function matrixOf({ origin, u, v }: Pose): Mat4 {
  const w = { x: u.y * v.z - u.z * v.y, y: u.z * v.x - u.x * v.z, z: u.x * v.y - u.y * v.x };
  return [u.x, u.y, u.z, 0, v.x, v.y, v.z, 0, w.x, w.y, w.z, 0, origin.x, origin.y, origin.z, 1];
}

// Layers are told apart by their text: the same piece is seated on many drawers.
const drawn = new Map<string, Manifold>();

/** A solid of a scene where it is seated. */
export function manifoldOf({ layers, pose }: Solid): Manifold {
  const key = JSON.stringify(layers);
  const found = drawn.get(key) ?? union(layers.map(layerManifold));
  drawn.set(key, found);
  return found.transform(matrixOf(pose));
}

export const union = (manifolds: readonly Manifold[]): Manifold => library.Manifold.union(manifolds);

const groups = new WeakMap<SeatScene, Map<Group, Manifold>>();

/** All solids of a group of a scene as one. */
export function groupManifold(scene: SeatScene, group: Group): Manifold {
  const known = groups.get(scene) ?? new Map<Group, Manifold>();
  groups.set(scene, known);
  const found =
    known.get(group) ?? union(scene.solids.filter((solid) => solid.group === group).map(manifoldOf));
  known.set(group, found);
  return found;
}

/** Where it reaches from and to, along x, y and z. */
export function blockOf(body: Manifold): { readonly min: Vec3; readonly max: Vec3 } {
  const { min, max } = body.boundingBox();
  const vec = ([x, y, z]: readonly [number, number, number]): Vec3 => ({ x, y, z });
  return { min: vec(min), max: vec(max) };
}

/** All corners of a solid, in single precision. */
export function cornersOf(body: Manifold): readonly Vec3[] {
  const { numProp, vertProperties } = body.getMesh();
  return Array.from({ length: vertProperties.length / numProp }, (_, index) => {
    const [x = NaN, y = NaN, z = NaN] = vertProperties.subarray(index * numProp, index * numProp + 3);
    return { x, y, z };
  });
}

/** An upright block. */
export const blockManifold = (min: Vec3, max: Vec3): Manifold =>
  library.Manifold.cube([max.x - min.x, max.y - min.y, max.z - min.z]).translate([min.x, min.y, min.z]);

/** mm³ */
export const sharedVolume = (a: Manifold, b: Manifold): number =>
  library.Manifold.intersection(a, b).volume();
