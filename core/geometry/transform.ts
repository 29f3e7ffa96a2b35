import type { Contour, Point, Vertex } from './types.ts';

/** The contour with every point moved by a rigid map that keeps left and right; radii and bulges stay. */
function moved<C extends Contour>(contour: C, map: (point: Point) => Point): C {
  if (contour.kind === 'circle') return { ...contour, center: map(contour.center) };
  const vertices = contour.vertices.map((vertex: Vertex): Vertex => {
    const { x, y } = map(vertex);
    return { x, y, bulge: vertex.bulge };
  });
  return { ...contour, vertices };
}

/** A contour shifted by mm: `translate(rectangle(10, 5), { x: 100, y: 0 })`. */
export const translate = <C extends Contour>(contour: C, by: Point): C =>
  moved(contour, ({ x, y }) => ({ x: x + by.x, y: y + by.y }));

/** Cosine and sine, with quarter turns exact, so that right angles stay right to the last digit. */
function turn(degrees: number): readonly [number, number] {
  const quarters = (((degrees / 90) % 4) + 4) % 4;
  if (quarters === 0) return [1, 0];
  if (quarters === 1) return [0, 1];
  if (quarters === 2) return [-1, 0];
  if (quarters === 3) return [0, -1];
  const radians = (degrees * Math.PI) / 180;
  return [Math.cos(radians), Math.sin(radians)];
}

/** A contour turned counter-clockwise by degrees about a point, the origin unless told. */
export function rotate<C extends Contour>(contour: C, degrees: number, about: Point = { x: 0, y: 0 }): C {
  if (degrees === 0) return contour;
  const [cos, sin] = turn(degrees);
  return moved(contour, ({ x, y }) => {
    const [dx, dy] = [x - about.x, y - about.y];
    return { x: about.x + dx * cos - dy * sin, y: about.y + dx * sin + dy * cos };
  });
}
