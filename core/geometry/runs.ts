import { SAME_LENGTH, SHORTEST_SEGMENT } from '../units/tolerances.ts';
import { carrierOf, distanceToCarrier, type Carrier } from './carrier.ts';
import type { Chain, Piece } from './chain.ts';
import type { Point } from './types.ts';
import { cross, distance, dot, subtract } from './vector.ts';

/** A stretch of a chain on one line or circle, with the exact pieces it came from. */
export interface Run {
  readonly carrier: Carrier;
  readonly pieces: readonly Piece[];
  readonly points: readonly Point[];
}

/** The runs of a chain in order, neighbours on different carriers; one run alone if all lies on one circle. */
export function runsOf({ points, sources }: Chain, pieces: readonly Piece[]): readonly Run[] {
  const sides = points.flatMap((point, index): readonly Run[] => {
    const piece = pieces[sources[index] ?? -1];
    const end = points[(index + 1) % points.length];
    if (piece === undefined || end === undefined) return [];
    return [{ carrier: carrierOf(piece.segment), pieces: [piece], points: [point, end] }];
  });
  return joinRuns(sides);
}

/** Joins neighbours on one carrier, and drops runs too short to export, until nothing changes. */
export function joinRuns(runs: readonly Run[]): readonly Run[] {
  const joined: Run[] = [];
  for (const run of runs) {
    const last = joined.at(-1);
    if (last !== undefined && sameCarrier(last, run)) joined[joined.length - 1] = join(last, run);
    else joined.push(run);
  }
  const [first, last] = [joined[0], joined.at(-1)];
  if (joined.length > 1 && first !== undefined && last !== undefined && sameCarrier(last, first)) {
    joined.pop();
    joined[0] = join(last, first);
  }
  if (joined.length === 1) return joined;
  const long = joined.filter((run) => Math.abs(travel(run)) >= SHORTEST_SEGMENT);
  return long.length === joined.length ? joined : joinRuns(long);
}

const join = (a: Run, b: Run): Run => ({
  carrier: a.carrier,
  pieces: a.pieces.concat(a.pieces.at(-1) === b.pieces[0] ? b.pieces.slice(1) : b.pieces),
  points: a.points.concat(b.points),
});

function sameCarrier(a: Run, b: Run): boolean {
  const [one, other] = [a.pieces.at(-1), b.pieces[0]];
  if (one === undefined || other === undefined) return false;
  if (one === other) return true;
  if (one.auxiliary !== other.auxiliary) return false;
  if (a.carrier.kind === 'circle' && b.carrier.kind === 'circle') {
    return (
      distance(a.carrier.center, b.carrier.center) <= SAME_LENGTH &&
      Math.abs(a.carrier.radius - b.carrier.radius) <= SAME_LENGTH
    );
  }
  if (a.carrier.kind === 'circle' || b.carrier.kind === 'circle') return false;
  const on = ({ segment }: Piece, carrier: Carrier): boolean =>
    distanceToCarrier(segment.start, carrier) <= SAME_LENGTH &&
    distanceToCarrier(segment.end, carrier) <= SAME_LENGTH;
  return on(one, b.carrier) && on(other, a.carrier);
}

/** How far a run goes along its carrier in mm, on a circle counter-clockwise; there and back is 0. */
export function travel({ carrier, points }: Run): number {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return 0;
  return carrier.kind === 'line'
    ? dot(carrier.direction, subtract(last, first))
    : carrier.radius * angleThrough(carrier.center, points);
}

/** Signed angle in radians through which points go around a centre, each step the short way. */
export function angleThrough(center: Point, points: readonly Point[]): number {
  let total = 0;
  let before: Point | null = null;
  for (const point of points) {
    const spoke = subtract(point, center);
    if (before !== null) total += Math.atan2(cross(before, spoke), dot(before, spoke));
    before = spoke;
  }
  return total;
}
