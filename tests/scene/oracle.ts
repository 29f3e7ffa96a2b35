import type { DrawerFit } from '../../core/fit/types.ts';
import type { Point } from '../../core/geometry/types.ts';
import type { Vec3 } from '../../core/jigs/types.ts';
import type { Edge } from '../../core/order/types.ts';
import type { Solid } from '../../core/scene/types.ts';

// Front and box told afresh from the sizes of a fit, apart from the code under test.

/** How far inside a face's edge a point lies, mm. */
export function inwards(edge: Edge, { x, y }: Vec3, fit: DrawerFit): number {
  if (edge === 'bottom') return y;
  if (edge === 'top') return fit.frontH - y;
  // Face down, the cabinet's right is at x = 0.
  return edge === 'right' ? x : fit.frontW - x;
}

/** How far the front's edge has come in at a height: 0 is the back, below is wood. */
export const setbackAt = (z: number, fit: DrawerFit): number =>
  (fit.frontThickness + z) * Math.tan((fit.rules.backBevel.value * Math.PI) / 180);

export function inFront(point: Vec3, fit: DrawerFit): boolean {
  const edges: readonly Edge[] = ['left', 'right', 'top', 'bottom'];
  return (
    point.z > -fit.frontThickness &&
    point.z < 0 &&
    edges.every((edge) => inwards(edge, point, fit) > setbackAt(point.z, fit))
  );
}

/** Whether a point is in the wood of a box whose walls stand on a rectangle. */
export function inBoxWalls(
  point: Vec3,
  box: { readonly min: Vec3; readonly max: Vec3 },
  fit: DrawerFit,
): boolean {
  const { x, y, z } = point;
  if (x <= box.min.x || x >= box.max.x || y <= box.min.y || y >= box.max.y || z <= 0) return false;
  return z < fit.boxFront || x < box.min.x + fit.boxSide || x > box.max.x - fit.boxSide;
}

/** Even-odd: whether a point is inside closed lines. */
function inside({ x, y }: Point, rings: readonly (readonly Point[])[]): boolean {
  let odd = false;
  for (const ring of rings) {
    for (const [index, a] of ring.entries()) {
      const b = ring[(index + 1) % ring.length] ?? a;
      if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) odd = !odd;
    }
  }
  return odd;
}

/** Whether a point is in the wood of a solid of straight layers. */
export function inSolid(point: Vec3, { pose, layers }: Solid): boolean {
  const { origin, u, v } = pose;
  const off = { x: point.x - origin.x, y: point.y - origin.y, z: point.z - origin.z };
  const w = { x: u.y * v.z - u.z * v.y, y: u.z * v.x - u.x * v.z, z: u.x * v.y - u.y * v.x };
  const along = (axis: Vec3) => off.x * axis.x + off.y * axis.y + off.z * axis.z;
  const flat = { x: along(u), y: along(v) };
  const height = along(w);
  return layers.some(
    ({ outline, holes, from, to }) => height > from && height < to && inside(flat, [outline, ...holes]),
  );
}
