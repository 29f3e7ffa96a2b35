import { BufferGeometry, EdgesGeometry, Float32BufferAttribute, ShapeUtils, Vector2 } from 'three';
import { LineSegmentsGeometry } from 'three/examples/jsm/lines/LineSegmentsGeometry.js';
import type { Point } from '../../core/geometry/types.ts';
import type { Vec3 } from '../../core/jigs/types.ts';
import { inPose } from '../../core/jigs/vec3.ts';
import type { Layer, Line, Solid } from '../../core/scene/types.ts';

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

/** Lines of a width in pixels, each from one point to another. */
export function linesGeometry(lines: readonly Line[]): LineSegmentsGeometry {
  const geometry = new LineSegmentsGeometry();
  geometry.setPositions(lines.flatMap(([a, b]) => [a.x, a.y, a.z, b.x, b.y, b.z]));
  return geometry;
}

/** The edges of a mesh, and the lines drawn on the solid. */
export function edgeLines(mesh: BufferGeometry, drawn: readonly Line[]): LineSegmentsGeometry {
  const edges = new EdgesGeometry(mesh, ROUNDED);
  const positions = [...(edges.getAttribute('position')?.array ?? [])];
  edges.dispose();
  const geometry = new LineSegmentsGeometry();
  geometry.setPositions([...positions, ...drawn.flatMap(([a, b]) => [a.x, a.y, a.z, b.x, b.y, b.z])]);
  return geometry;
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

/** A closed line through corners. */
export const rim = (corners: readonly Vec3[]): readonly Line[] =>
  corners.map((corner, index): Line => [corner, corners[(index + 1) % corners.length] ?? corner]);
