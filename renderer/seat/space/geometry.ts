import {
  BufferGeometry,
  EdgesGeometry,
  Float32BufferAttribute,
  InstancedBufferAttribute,
  InstancedBufferGeometry,
  InstancedInterleavedBuffer,
  InterleavedBufferAttribute,
  ShapeUtils,
  Vector2,
} from 'three';
import type { Point } from '../../../core/geometry/types.ts';
import type { Vec3 } from '../../../core/jigs/types.ts';
import { inPose } from '../../../core/jigs/vec3.ts';
import type { Layer, Line, Solid } from '../../../core/scene/types.ts';

/** Degrees. Faces that meet at less are one rounded face: no line is drawn between them. */
const ROUNDED = 20;

type Triangle = readonly [Vec3, Vec3, Vec3];

const pointsOf = (points: readonly Point[]): Vector2[] => points.map(({ x, y }) => new Vector2(x, y));

/** The triangles of a flat shape, as numbers of its corners, holes after the outline. */
const triangulate = (outline: readonly Point[], holes: readonly (readonly Point[])[]) =>
  ShapeUtils.triangulateShape(pointsOf(outline), holes.map(pointsOf));

function layerTriangles(layer: Layer, place: (point: Point, height: number) => Vec3): readonly Triangle[] {
  const { outline, top = outline, holes, from, to } = layer;
  const low = [outline, ...holes].flat();
  const high = [top, ...holes].flat();
  const caps = triangulate(outline, holes).flatMap(([a = 0, b = 0, c = 0]): readonly Triangle[] => {
    const [la, lb, lc, ha, hb, hc] = [low[a], low[b], low[c], high[a], high[b], high[c]];
    if (!la || !lb || !lc || !ha || !hb || !hc) return [];
    return [
      [place(la, from), place(lc, from), place(lb, from)],
      [place(ha, to), place(hb, to), place(hc, to)],
    ];
  });
  const sides = [[outline, top] as const, ...holes.map((hole) => [hole, hole] as const)].flatMap(
    ([lower, upper]) =>
      lower.flatMap((a, index): readonly Triangle[] => {
        const next = (index + 1) % lower.length;
        const [b, c, d] = [lower[next], upper[next], upper[index]];
        if (!b || !c || !d) return [];
        const [p, q, r, s] = [place(a, from), place(b, from), place(c, to), place(d, to)];
        return [
          [p, q, r],
          [p, r, s],
        ];
      }),
  );
  return [...caps, ...sides];
}

function meshOf(triangles: readonly Triangle[]): BufferGeometry {
  const geometry = new BufferGeometry();
  const positions = triangles.flat().flatMap(({ x, y, z }) => [x, y, z]);
  geometry.setAttribute('position', new Float32BufferAttribute(positions, 3));
  geometry.computeVertexNormals();
  return geometry;
}

/** The faces of a solid where it is seated. */
export const solidMesh = ({ layers, pose }: Solid): BufferGeometry =>
  meshOf(layers.flatMap((layer) => layerTriangles(layer, (point, height) => inPose(pose, point, height))));

/** A strip along a line of length 1 with room for its ends; x is to its sides. */
const STRIP = [-1, 2, 0, 1, 2, 0, -1, 1, 0, 1, 1, 0, -1, 0, 0, 1, 0, 0, -1, -1, 0, 1, -1, 0] as const;
const STRIP_TRIANGLES = [0, 2, 1, 2, 3, 1, 2, 4, 3, 4, 5, 3, 4, 6, 5, 6, 7, 5];

/** A strip for each line of a row of ends: x, y, z of the one, then of the other. `before`: mm of lines before it. */
function stripGeometry(ends: readonly number[]): InstancedBufferGeometry {
  const geometry = new InstancedBufferGeometry();
  const count = ends.length / 6;
  const before = new Float32Array(count);
  for (let index = 1; index < count; index += 1) {
    const [x = 0, y = 0, z = 0, toX = 0, toY = 0, toZ = 0] = ends.slice(6 * index - 6, 6 * index);
    before[index] = (before[index - 1] ?? 0) + Math.hypot(toX - x, toY - y, toZ - z);
  }
  const both = new InstancedInterleavedBuffer(new Float32Array(ends), 6, 1);
  geometry.setIndex(STRIP_TRIANGLES);
  geometry.setAttribute('position', new Float32BufferAttribute(STRIP, 3));
  geometry.setAttribute('start', new InterleavedBufferAttribute(both, 3, 0));
  geometry.setAttribute('end', new InterleavedBufferAttribute(both, 3, 3));
  geometry.setAttribute('before', new InstancedBufferAttribute(before, 1));
  geometry.instanceCount = count;
  return geometry;
}

const endsOf = (lines: readonly Line[]): readonly number[] =>
  lines.flatMap(([a, b]) => [a.x, a.y, a.z, b.x, b.y, b.z]);

/** Lines of a width in pixels (`Lines`), each from one point to another. */
export const linesGeometry = (lines: readonly Line[]): InstancedBufferGeometry =>
  stripGeometry(endsOf(lines));

/** The edges of a mesh, and the lines drawn on the solid. */
export function edgeLines(mesh: BufferGeometry, drawn: readonly Line[]): InstancedBufferGeometry {
  const edges = new EdgesGeometry(mesh, ROUNDED);
  const positions = [...(edges.getAttribute('position')?.array ?? [])];
  edges.dispose();
  return stripGeometry([...positions, ...endsOf(drawn)]);
}

/** A flat face in space, seen from both sides. */
export function faceMesh(outline: readonly Vec3[], holes: readonly (readonly Vec3[])[]): BufferGeometry {
  const [first] = outline;
  const flatAxis = (['x', 'y', 'z'] as const).find(
    (axis) => first !== undefined && outline.every((point) => Math.abs(point[axis] - first[axis]) < 1e-6),
  );
  const flat = (point: Vec3): Point =>
    flatAxis === 'x'
      ? { x: point.y, y: point.z }
      : flatAxis === 'y'
        ? { x: point.x, y: point.z }
        : { x: point.x, y: point.y };
  const corners = [outline, ...holes].flat();
  const triangles = triangulate(
    outline.map(flat),
    holes.map((hole) => hole.map(flat)),
  );
  return meshOf(
    triangles.flatMap(([a = 0, b = 0, c = 0]): readonly Triangle[] => {
      const [p, q, r] = [corners[a], corners[b], corners[c]];
      return p && q && r ? [[p, q, r]] : [];
    }),
  );
}
