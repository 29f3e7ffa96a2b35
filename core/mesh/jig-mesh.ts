import type { Manifold, ManifoldToplevel, Mat4, SimplePolygon, Vec3 } from 'manifold-3d';
import type { Pose } from '../jigs/types.ts';
import { cross } from '../jigs/vec3.ts';
import type { Layer, Solid } from '../scene/types.ts';
import type { Mesh, MeshPoint, MeshTriangle } from './types.ts';
import { weld } from './weld.ts';

type Keep = (body: Manifold) => Manifold;

/**
 * Corners are put on a grid of this many steps to the mm before solids are fused, so that faces which touch are
 * the same face and not a hair apart. Single precision holds such numbers exactly up to 2048 mm.
 */
const GRID = 2 ** 13;

/** A hole with a key or a pin in it is full by more than this; one that a key only crosses is not. */
const FULL = 0.5;

/**
 * The solids of a jig fused to one as triangles: keys and pins too, and the play round them, which a print has no use
 * for. Its least x, y and z are 0: it stands on the bed. No triangles when there are no solids. `manifold` is the
 * geometry library, set up.
 */
export function jigMesh(solids: readonly Solid[], manifold: ManifoldToplevel): Mesh {
  const made: Manifold[] = [];
  /** The library's memory is its own: what is made there is given back at the end. */
  const keep: Keep = (body) => {
    made.push(body);
    return body;
  };
  const seat = (body: Manifold, pose: Pose): Manifold =>
    keep(keep(keep(body).transform(matrixOf(pose))).warp(ontoGrid));
  try {
    const placed = solids.map(({ layers, pose, material }) => ({
      holds: material === 'key' || material === 'pin',
      bodies: layers.map((layer) => seat(layerBody(layer, manifold, keep), pose)),
      holes: layers.flatMap((layer) =>
        layer.holes.map((hole) => seat(prism([hole.toReversed()], layer, manifold, keep), pose)),
      ),
    }));
    const holders = placed.filter(({ holds }) => holds).flatMap(({ bodies }) => bodies);
    const holes = placed.filter(({ holds }) => !holds).flatMap((solid) => solid.holes);
    const full = holes.filter((hole) =>
      holders.some((holder) => keep(hole.intersect(holder)).volume() > FULL * hole.volume()),
    );
    const bodies = [...placed.flatMap((solid) => solid.bodies), ...full];
    if (bodies.length === 0) return { positions: [], triangles: [] };
    const fused = keep(manifold.Manifold.union(bodies));
    const { min } = fused.boundingBox();
    return weld(meshOf(keep(fused.translate([-min[0], -min[1], -min[2]]))));
  } finally {
    for (const body of made) body.delete();
  }
}

const ring = (points: Layer['outline']): SimplePolygon => points.map(({ x, y }) => [x, y]);

/** What a layer has between its two heights, inside rings that are walked as its own are. */
function prism(
  rings: readonly Layer['outline'][],
  { from, to }: Layer,
  { Manifold }: ManifoldToplevel,
  keep: Keep,
): Manifold {
  return keep(Manifold.extrude(rings.map(ring), to - from)).translate([0, 0, from]);
}

/** A layer over its own drawing; a bevelled one is the hull of its lower and its upper outline. */
function layerBody(layer: Layer, manifold: ManifoldToplevel, keep: Keep): Manifold {
  const { outline, top, holes, from, to } = layer;
  if (top === undefined) return prism([outline, ...holes], layer, manifold, keep);
  const at = (points: Layer['outline'], z: number) => points.map(({ x, y }): Vec3 => [x, y, z]);
  return manifold.Manifold.hull([...at(outline, from), ...at(top, to)]);
}

/** Turns and moves what is drawn in its own coordinates, column by column. */
function matrixOf({ origin, u, v }: Pose): Mat4 {
  const w = cross(u, v);
  return [u.x, u.y, u.z, 0, v.x, v.y, v.z, 0, w.x, w.y, w.z, 0, origin.x, origin.y, origin.z, 1];
}

/** Moves a corner in place, as the library has it. */
function ontoGrid(corner: Vec3): void {
  corner[0] = Math.round(corner[0] * GRID) / GRID;
  corner[1] = Math.round(corner[1] * GRID) / GRID;
  corner[2] = Math.round(corner[2] * GRID) / GRID;
}

function meshOf(body: Manifold): Mesh {
  const { numProp, vertProperties, triVerts } = body.getMesh();
  const positions: MeshPoint[] = [];
  for (let at = 0; at < vertProperties.length; at += numProp) {
    const [x = NaN, y = NaN, z = NaN] = vertProperties.subarray(at, at + 3);
    positions.push([x, y, z]);
  }
  const triangles: MeshTriangle[] = [];
  for (let at = 0; at < triVerts.length; at += 3) {
    const [a = NaN, b = NaN, c = NaN] = triVerts.subarray(at, at + 3);
    triangles.push([a, b, c]);
  }
  return { positions, triangles };
}
