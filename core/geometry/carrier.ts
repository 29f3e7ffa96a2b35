import { SAME_LENGTH } from '../units/tolerances.ts';
import type { Segment } from './segments.ts';
import type { Point } from './types.ts';
import { add, cross, distance, dot, leftOf, scale, subtract, unit } from './vector.ts';

/** The endless line or whole circle that a segment lies on. */
export type Carrier =
  | { readonly kind: 'line'; readonly point: Point; readonly direction: Point }
  | { readonly kind: 'circle'; readonly center: Point; readonly radius: number };

export const carrierOf = (segment: Segment): Carrier =>
  segment.kind === 'line'
    ? { kind: 'line', point: segment.start, direction: unit(subtract(segment.end, segment.start)) }
    : { kind: 'circle', center: segment.center, radius: segment.radius };

/** Distance in mm from a point to a carrier. */
export const distanceToCarrier = (point: Point, carrier: Carrier): number =>
  carrier.kind === 'line'
    ? Math.abs(cross(carrier.direction, subtract(point, carrier.point)))
    : Math.abs(distance(point, carrier.center) - carrier.radius);

/** Two points at ± `half` along a direction; one where they are the same. */
const pair = (middle: Point, direction: Point, half: number): readonly Point[] =>
  half === 0 ? [middle] : [add(middle, scale(direction, -half)), add(middle, scale(direction, half))];

const lineLine = (a: Carrier & { kind: 'line' }, b: Carrier & { kind: 'line' }): readonly Point[] => {
  const sine = cross(a.direction, b.direction);
  if (Math.abs(sine) < 1e-12) return []; // parallel to the last digits that a direction has
  return [add(a.point, scale(a.direction, cross(subtract(b.point, a.point), b.direction) / sine))];
};

const lineCircle = (
  a: Carrier & { kind: 'line' },
  b: Carrier & { kind: 'circle' },
  slack: number,
): readonly Point[] => {
  const foot = add(a.point, scale(a.direction, dot(subtract(b.center, a.point), a.direction)));
  const away = distance(foot, b.center);
  if (away > b.radius + slack) return [];
  return pair(foot, a.direction, Math.sqrt(Math.max(0, b.radius ** 2 - away ** 2)));
};

const circleCircle = (
  a: Carrier & { kind: 'circle' },
  b: Carrier & { kind: 'circle' },
  slack: number,
): readonly Point[] => {
  const apart = distance(a.center, b.center);
  const tooFar = apart - (a.radius + b.radius);
  const inside = Math.abs(a.radius - b.radius) - apart;
  if (apart < 1e-12 || tooFar > slack || inside > slack) return [];
  const toB = scale(subtract(b.center, a.center), 1 / apart);
  // Where the circles do not quite meet, the point half way across the gap stands for the tangent point.
  if (tooFar > 0) return [add(a.center, scale(toB, a.radius + tooFar / 2))];
  if (inside > 0) {
    const outward = a.radius > b.radius ? 1 : -1;
    return [add(a.center, scale(toB, outward * a.radius - (outward * inside) / 2))];
  }
  const along = (apart ** 2 + (a.radius - b.radius) * (a.radius + b.radius)) / (2 * apart);
  const half = Math.sqrt(Math.max(0, (a.radius - along) * (a.radius + along)));
  return pair(add(a.center, scale(toB, along)), leftOf(toB), half);
};

/**
 * Where two carriers meet: no point, one (crossing lines, tangent), or two. Carriers that miss each other by no
 * more than `slack` mm count as tangent. Carriers that coincide have no single points and give none.
 */
export function meetCarriers(a: Carrier, b: Carrier, slack = SAME_LENGTH): readonly Point[] {
  if (a.kind === 'line') return b.kind === 'line' ? lineLine(a, b) : lineCircle(a, b, slack);
  return b.kind === 'line' ? lineCircle(b, a, slack) : circleCircle(a, b, slack);
}
