import { distance, dot, subtract } from '../geometry/vector.ts';
import type { Point } from '../geometry/types.ts';

/** All points nearer than `radius` to the way between two points, mm. */
export interface Capsule {
  readonly from: Point;
  readonly to: Point;
  readonly radius: number;
}

/** The point of the way between two points that is nearest to another. */
export function nearestOnWay(from: Point, to: Point, point: Point): Point {
  const way = subtract(to, from);
  const square = dot(way, way);
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, dot(subtract(point, from), way) / square));
  return { x: from.x + share * way.x, y: from.y + share * way.y };
}

/** How far a point is outside a capsule; negative inside. */
export const outsideCapsule = ({ from, to, radius }: Capsule, point: Point): number =>
  distance(nearestOnWay(from, to, point), point) - radius;

/** A side or an end of a capsule's border. */
type Border =
  | { readonly kind: 'side'; readonly from: Point; readonly to: Point }
  | { readonly kind: 'end'; readonly center: Point; readonly radius: number };

function bordersOf({ from, to, radius }: Capsule): readonly Border[] {
  const ends: Border[] = [
    { kind: 'end', center: from, radius },
    { kind: 'end', center: to, radius },
  ];
  const length = distance(from, to);
  if (length === 0) return ends.slice(1);
  const across = { x: (-(to.y - from.y) / length) * radius, y: ((to.x - from.x) / length) * radius };
  const shifted = (by: number): Border => ({
    kind: 'side',
    from: { x: from.x + by * across.x, y: from.y + by * across.y },
    to: { x: to.x + by * across.x, y: to.y + by * across.y },
  });
  return [...ends, shifted(1), shifted(-1)];
}

/** The points of a capsule's border that are nearest to a point, one for each end and side. */
export const nearestOnBorder = (capsule: Capsule, point: Point): readonly Point[] =>
  bordersOf(capsule).map((border) => {
    if (border.kind === 'side') return nearestOnWay(border.from, border.to, point);
    const away = distance(border.center, point);
    if (away === 0) return { x: border.center.x + border.radius, y: border.center.y };
    const scale = border.radius / away;
    return {
      x: border.center.x + (point.x - border.center.x) * scale,
      y: border.center.y + (point.y - border.center.y) * scale,
    };
  });

/** Where a capsule's border meets the straight way between two points. */
export const meetWay = (capsule: Capsule, from: Point, to: Point): readonly Point[] =>
  bordersOf(capsule).flatMap((border) => meet(border, { kind: 'side', from, to }));

/** Where the borders of two capsules meet. */
export const meetCapsule = (a: Capsule, b: Capsule): readonly Point[] =>
  bordersOf(a).flatMap((one) => bordersOf(b).flatMap((other) => meet(one, other)));

function meet(a: Border, b: Border): readonly Point[] {
  if (a.kind === 'side') return b.kind === 'side' ? meetSides(a, b) : meetEnd(b, a);
  return b.kind === 'side' ? meetEnd(a, b) : meetEnds(a, b);
}

type Side = Extract<Border, { kind: 'side' }>;
type End = Extract<Border, { kind: 'end' }>;

function meetSides(a: Side, b: Side): readonly Point[] {
  const [u, v, w] = [subtract(a.to, a.from), subtract(b.to, b.from), subtract(b.from, a.from)];
  const area = u.x * v.y - u.y * v.x;
  if (area === 0) return [];
  const along = (w.x * v.y - w.y * v.x) / area;
  return [{ x: a.from.x + along * u.x, y: a.from.y + along * u.y }];
}

function meetEnd({ center, radius }: End, { from, to }: Side): readonly Point[] {
  const way = subtract(to, from);
  const square = dot(way, way);
  if (square === 0) return [];
  const middle = dot(subtract(center, from), way) / square;
  const foot = { x: from.x + middle * way.x, y: from.y + middle * way.y };
  const half = radius ** 2 - distance(foot, center) ** 2;
  if (half < 0) return [];
  const by = Math.sqrt(half / square);
  return [by, -by].map((share) => ({ x: foot.x + share * way.x, y: foot.y + share * way.y }));
}

function meetEnds(a: End, b: End): readonly Point[] {
  const apart = distance(a.center, b.center);
  if (apart === 0) return [];
  const along = (apart ** 2 + a.radius ** 2 - b.radius ** 2) / (2 * apart);
  const half = a.radius ** 2 - along ** 2;
  if (half < 0) return [];
  const [x, y] = [(b.center.x - a.center.x) / apart, (b.center.y - a.center.y) / apart];
  const across = Math.sqrt(half);
  return [across, -across].map((by) => ({
    x: a.center.x + along * x - by * y,
    y: a.center.y + along * y + by * x,
  }));
}
