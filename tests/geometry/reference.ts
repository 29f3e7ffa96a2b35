import { Clipper, EndType, JoinType, type Path64, type Paths64 } from 'clipper2-ts';
import type { ClosedContour, Point, Vertex } from '../../core/geometry/types.ts';

/**
 * Independent measures for geometry tests. Contours are sampled from their vertices and bulges by the DXF
 * definition, with nothing taken from core but the types.
 */

/** The point at a share of the arc that a bulge stands for: the start turned about the centre. */
function onBulge(from: Vertex, to: Point, share: number): Point {
  const { bulge } = from;
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  if (bulge === 0) return { x: from.x + dx * share, y: from.y + dy * share };
  const lift = (1 - bulge * bulge) / (4 * bulge);
  const [cx, cy] = [(from.x + to.x) / 2 - dy * lift, (from.y + to.y) / 2 + dx * lift];
  const angle = 4 * Math.atan(bulge) * share;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [rx, ry] = [from.x - cx, from.y - cy];
  return { x: cx + rx * cos - ry * sin, y: cy + rx * sin + ry * cos };
}

function onCircle(center: Point, radius: number, count: number): readonly Point[] {
  return Array.from({ length: count }, (_, index) => {
    const angle = (2 * Math.PI * index) / count;
    return { x: center.x + radius * Math.cos(angle), y: center.y + radius * Math.sin(angle) };
  });
}

/** The corners of a closed contour's chords, each within `flatness` mm of its arc. */
export function sampled(contour: ClosedContour, flatness: number): readonly Point[] {
  if (contour.kind === 'circle') {
    const { center, radius } = contour;
    return onCircle(center, radius, Math.max(12, Math.ceil(Math.PI * Math.sqrt(radius / flatness))));
  }
  return contour.vertices.flatMap((from, index) => {
    const to = contour.vertices[(index + 1) % contour.vertices.length] ?? from;
    const sagitta = (Math.abs(from.bulge) * Math.hypot(to.x - from.x, to.y - from.y)) / 2;
    const count = Math.max(1, Math.ceil(1.1 * Math.sqrt(sagitta / flatness)));
    return Array.from({ length: count }, (_, step) => onBulge(from, to, step / count));
  });
}

/** Evenly spread points on a contour, `each` on every segment, its start among them. */
export function pointsOn(contour: ClosedContour, each: number): readonly Point[] {
  if (contour.kind === 'circle') return onCircle(contour.center, contour.radius, 4 * each);
  return contour.vertices.flatMap((from, index) => {
    const to = contour.vertices[(index + 1) % contour.vertices.length] ?? from;
    return Array.from({ length: each }, (_, step) => onBulge(from, to, step / each));
  });
}

/** Distance in mm from a point to the nearest side of closed polylines. */
export function distanceToSides(point: Point, ...outlines: readonly (readonly Point[])[]): number {
  let least = Infinity;
  for (const outline of outlines) {
    let a = outline.at(-1) ?? point;
    for (const b of outline) {
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const length = dx * dx + dy * dy;
      const share = length === 0 ? 0 : ((point.x - a.x) * dx + (point.y - a.y) * dy) / length;
      const held = Math.min(1, Math.max(0, share));
      const [ox, oy] = [a.x + held * dx - point.x, a.y + held * dy - point.y];
      least = Math.min(least, ox * ox + oy * oy);
      a = b;
    }
  }
  return Math.sqrt(least);
}

/** Area in mm² of a polyline, counter-clockwise positive: the shoelace formula. */
export function shoelace(points: readonly Point[]): number {
  return points.reduce((total, { x, y }, index) => {
    const next = points[(index + 1) % points.length] ?? { x, y };
    return total + (x * next.y - next.x * y) / 2;
  }, 0);
}

/** Whether a point is inside a polyline: how often a ray to the right crosses it. */
export function isInside({ x, y }: Point, outline: readonly Point[]): boolean {
  let inside = false;
  let a = outline.at(-1) ?? { x, y };
  for (const b of outline) {
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
    a = b;
  }
  return inside;
}

/** Steps per mm of the reference clipper's grid: 10 nm, and no slow big integers up to 900 mm. */
const GRID = 1e5;

export const toPath = (contour: ClosedContour, flatness: number): Path64 =>
  sampled(contour, flatness).map(({ x, y }) => ({ x: Math.round(x * GRID), y: Math.round(y * GRID) }));

/** Rings of the offset by the clipper's own offsetter, on outlines flattened within `flatness` mm. */
export function referenceOffset(contour: ClosedContour, by: number, flatness: number): Paths64 {
  const paths = [toPath(contour, flatness)];
  const rings = Clipper.inflatePaths(paths, by * GRID, JoinType.Round, EndType.Polygon, 2, flatness * GRID);
  return rings.filter((ring) => !isSplinter(ring));
}

/** Area of integer rings in mm². */
export const areaOf = (rings: Paths64): number => Clipper.areaPaths(rings) / GRID ** 2;

/** Thinner than 0.001 mm on average: no ring, but what flattening leaves of sides that fall on each other. */
function isSplinter(ring: Path64): boolean {
  const around = ring.reduce((total, { x, y }, index) => {
    const next = ring[(index + 1) % ring.length] ?? { x, y };
    return total + Math.hypot(next.x - x, next.y - y);
  }, 0);
  return Math.abs(Clipper.area(ring)) < (0.001 * GRID * around) / 2;
}
