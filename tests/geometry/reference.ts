import { Clipper, EndType, FillRule, JoinType, type Path64 } from 'clipper2-ts';
import type { ClosedContour, Point } from '../../core/geometry/types.ts';

/**
 * Independent measures for geometry tests. Contours are sampled from their vertices and bulges by the DXF
 * definition, with nothing taken from core but the types.
 */

/** The points of a closed contour, arcs cut into chords within `flatness` mm. */
export function sampled(contour: ClosedContour, flatness: number): readonly Point[] {
  if (contour.kind === 'circle') {
    const { center, radius } = contour;
    const count = Math.max(12, Math.ceil(Math.PI / Math.acos(Math.max(0.5, 1 - flatness / radius))));
    return Array.from({ length: count }, (_, index) => {
      const angle = (2 * Math.PI * index) / count;
      return { x: center.x + radius * Math.cos(angle), y: center.y + radius * Math.sin(angle) };
    });
  }
  return contour.vertices.flatMap((from, index) => {
    const to = contour.vertices[(index + 1) % contour.vertices.length] ?? from;
    if (from.bulge === 0) return [{ x: from.x, y: from.y }];
    const sagitta = (Math.abs(from.bulge) * Math.hypot(to.x - from.x, to.y - from.y)) / 2;
    const count = Math.max(2, Math.ceil(Math.sqrt(sagitta / flatness)));
    return Array.from({ length: count }, (_, step) => onBulge(from, to, from.bulge, step / count));
  });
}

/** The point at a share of the arc that a bulge stands for: the chord seen from the arc under equal angles. */
function onBulge(from: Point, to: Point, bulge: number, share: number): Point {
  // The arc's point at share t: rotate the start about the centre by t times the angle 4 atan(bulge).
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const lift = (1 - bulge * bulge) / (4 * bulge);
  const [cx, cy] = [(from.x + to.x) / 2 - dy * lift, (from.y + to.y) / 2 + dx * lift];
  const angle = 4 * Math.atan(bulge) * share;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [rx, ry] = [from.x - cx, from.y - cy];
  return { x: cx + rx * cos - ry * sin, y: cy + rx * sin + ry * cos };
}

/** Steps per mm of the reference clipper's grid. */
export const GRID = 1e6;

export const toPath = (contour: ClosedContour, flatness: number): Path64 =>
  sampled(contour, flatness).map(({ x, y }) => ({ x: Math.round(x * GRID), y: Math.round(y * GRID) }));

/** Rings of the offset by the clipper's own offsetter on outlines flattened within `flatness` mm. */
export function referenceOffset(
  contour: ClosedContour,
  distance: number,
  flatness: number,
): readonly Path64[] {
  const path = toPath(contour, flatness);
  return Clipper.inflatePaths(
    [path],
    distance * GRID,
    JoinType.Round,
    EndType.Polygon,
    2,
    flatness * GRID,
  ).filter((ring) => !isSplinter(ring));
}

/** Area of integer rings in mm². */
export const areaOf = (rings: readonly Path64[]): number =>
  rings.reduce((total, ring) => total + Clipper.area(ring), 0) / GRID ** 2;

export const union = (paths: readonly Path64[]): readonly Path64[] =>
  Clipper.union([...paths], FillRule.NonZero);

/** Thinner than 0.001 mm on average: no ring, but what flattening leaves of sides that fall on each other. */
export function isSplinter(ring: Path64): boolean {
  const around = ring.reduce((total, { x, y }, index) => {
    const next = ring[(index + 1) % ring.length] ?? { x, y };
    return total + Math.hypot(next.x - x, next.y - y);
  }, 0);
  return Math.abs(Clipper.area(ring)) / GRID < (0.001 * around) / 2;
}
