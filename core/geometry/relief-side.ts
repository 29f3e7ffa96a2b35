import { SAME_LENGTH, SHORTEST_SEGMENT } from '../units/tolerances.ts';
import { carrierOf, meetCarriers } from './carrier.ts';
import { distanceToSegment } from './distance.ts';
import { partOf } from './part-of.ts';
import { reversed, type Segment } from './segments.ts';
import type { Point } from './types.ts';
import { add, cross, distance, dot, leftOf, scale, subtract } from './vector.ts';

/** One flank of a relief: the rest of the wall and the way to the relief circle, in the ring's order. */
export interface ReliefSide {
  readonly segments: readonly Segment[];
  /** Where the flank reaches the circle, and how far round the circle that is from the corner, in radians. */
  readonly onCircle: Point;
  readonly angle: number;
}

/**
 * The flank of a relief on the wall that arrives at the corner or leaves it; null if the wall is too short.
 *
 * Where the wall leaves the circle within a quarter turn of the corner, the circle ends there. Beyond that the
 * circle would close behind the tool: the flank goes straight on from the quarter, along the bisector, to the wall.
 */
export function reliefSide(
  wall: Segment,
  role: 'arriving' | 'leaving',
  corner: Point,
  bisector: Point,
  radius: number,
): ReliefSide | null {
  const center = add(corner, scale(bisector, radius));
  const away = role === 'leaving' ? wall : reversed(wall); // walked from the corner
  const carrier = carrierOf(away);
  const onWall = (point: Point): boolean =>
    distanceToSegment(point, away) <= SAME_LENGTH && distance(point, corner) >= SHORTEST_SEGMENT;
  // Walking with the material on the left, the arriving wall stands right of the bisector seen from the corner.
  const across = scale(leftOf(bisector), role === 'arriving' ? -1 : 1);

  const exit = meetCarriers({ kind: 'circle', center, radius }, carrier).find(onWall);
  const angle = exit === undefined ? Infinity : angleFrom(center, corner, exit);
  if (exit !== undefined && angle <= Math.PI / 2 + 1e-9 && dot(subtract(exit, corner), across) > 0) {
    return flank(away, role, exit, [], exit, angle);
  }
  const quarter = add(center, scale(across, radius));
  const [reached] = meetCarriers({ kind: 'line', point: quarter, direction: bisector }, carrier)
    .filter((point) => onWall(point) && dot(subtract(point, quarter), bisector) >= SHORTEST_SEGMENT)
    .sort((a, b) => distance(a, quarter) - distance(b, quarter));
  if (reached === undefined) return null;
  const straight: Segment = { kind: 'line', start: quarter, end: reached };
  return flank(away, role, reached, [straight], quarter, Math.PI / 2);
}

/** Puts a flank in the ring's order; null if what is left of the wall could not be exported. */
function flank(
  away: Segment,
  role: 'arriving' | 'leaving',
  leave: Point,
  between: readonly Segment[],
  onCircle: Point,
  angle: number,
): ReliefSide | null {
  if (distance(leave, away.end) < SHORTEST_SEGMENT) return null;
  const rest = partOf(away, leave, away.end);
  const outward = [...between, rest];
  const segments = role === 'leaving' ? outward : outward.reverse().map(reversed);
  return { segments, onCircle, angle };
}

/** Unsigned angle in radians between two points seen from a centre. */
function angleFrom(center: Point, a: Point, b: Point): number {
  const [from, to] = [subtract(a, center), subtract(b, center)];
  return Math.abs(Math.atan2(cross(from, to), dot(from, to)));
}
