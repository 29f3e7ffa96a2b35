import { SAME_LENGTH, SHORTEST_SEGMENT } from '../units/tolerances.ts';
import { carrierOf, distanceToCarrier, type Carrier } from './carrier.ts';
import type { Chain, Piece } from './chain.ts';
import type { Point } from './types.ts';
import { cross, distance, dot, subtract } from './vector.ts';

/** A stretch of a chain on one line or circle, with the exact pieces it came from. */
export interface Run {
  readonly carrier: Carrier;
  readonly pieces: readonly Piece[];
  readonly start: Point;
  readonly end: Point;
  /** How far it goes along its carrier in mm, on a circle counter-clockwise; there and back is 0. */
  readonly travel: number;
}

/** The runs of a chain in order, neighbours on different carriers; one run alone if all lies on one circle. */
export function runsOf({ points, sources }: Chain, pieces: readonly Piece[]): readonly Run[] {
  const runs: Run[] = [];
  for (let from = 0; from < points.length;) {
    const source = sources[from] ?? -1;
    let to = from + 1;
    while (to < points.length && sources[to] === source) to += 1;
    const piece = pieces[source];
    const next = points[to % points.length];
    if (piece !== undefined && next !== undefined) runs.push(runOf(piece, [...points.slice(from, to), next]));
    from = to;
  }
  return joinRuns(runs);
}

function runOf(piece: Piece, points: readonly Point[]): Run {
  const carrier = carrierOf(piece.segment);
  const [start = piece.segment.start] = points;
  let [end, travel] = [start, 0];
  for (const point of points) {
    travel += advance(carrier, end, point);
    end = point;
  }
  return { carrier, pieces: [piece], start, end, travel };
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
  const long = joined.filter((run) => Math.abs(run.travel) >= SHORTEST_SEGMENT);
  return long.length === joined.length ? joined : joinRuns(long);
}

function join(a: Run, b: Run): Run {
  const { carrier, start } = a;
  const pieces = a.pieces.concat(a.pieces.at(-1) === b.pieces[0] ? b.pieces.slice(1) : b.pieces);
  // On a line the other run may count the other way, so the whole is measured anew.
  const travel =
    carrier.kind === 'line'
      ? advance(carrier, start, b.end)
      : a.travel + advance(carrier, a.end, b.start) + b.travel;
  return { carrier, pieces, start, end: b.end, travel };
}

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

/** The way along a carrier from one point to another in mm, on a circle the short way round. */
export function advance(carrier: Carrier, from: Point, to: Point): number {
  if (carrier.kind === 'line') return dot(carrier.direction, subtract(to, from));
  const [a, b] = [subtract(from, carrier.center), subtract(to, carrier.center)];
  return carrier.radius * Math.atan2(cross(a, b), dot(a, b));
}
