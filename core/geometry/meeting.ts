import { CONTOUR_ERROR, SAME_LENGTH } from '../units/tolerances.ts';
import { distanceToCarrier, meetCarriers } from './carrier.ts';
import { distanceToSegment } from './distance.ts';
import type { Run } from './runs.ts';
import type { Point } from './types.ts';
import { distance, midpoint } from './vector.ts';

/** mm. Where carriers nearly touch, the flattened ones cross this far from the exact ones at most. */
const REACH = 1;

/** The exact point at which one run gives way to the next; null if they do not meet near by. */
export function meetingOf(a: Run, b: Run): Point | null {
  const guess = midpoint(a.end, b.start);
  const crossings = meetCarriers(a.carrier, b.carrier, CONTOUR_ERROR / 2);
  const crossing = nearest(
    guess,
    crossings.filter((point) => isOn(point, a) && isOn(point, b)),
  );
  // Ends that the pieces share are exact already, and the only ones that hold where they are tangent.
  const shared = nearest(guess, sharedEnds(a, b));
  if (shared.away <= Math.min(crossing.away + CONTOUR_ERROR, REACH)) return shared.point;
  if (crossing.away <= REACH) return crossing.point;
  // The pieces end short of each other: something too short to export stood here, and its middle serves.
  const misses = Math.max(distanceToCarrier(guess, a.carrier), distanceToCarrier(guess, b.carrier));
  return misses <= 0.6 * CONTOUR_ERROR ? guess : null;
}

/** Whether a point lies on a run's pieces, not just on the line or circle that these are part of. */
const isOn = (point: Point, run: Run): boolean =>
  run.pieces.some(({ segment }) => distanceToSegment(point, segment) <= CONTOUR_ERROR);

const sharedEnds = (a: Run, b: Run): readonly Point[] => {
  const ends = b.pieces.flatMap(({ segment }) => [segment.start, segment.end]);
  return a.pieces
    .flatMap(({ segment }) => [segment.start, segment.end])
    .filter((point) => ends.some((end) => distance(point, end) < SAME_LENGTH / 10));
};

function nearest(guess: Point, points: readonly Point[]): { readonly point: Point | null; away: number } {
  let found: { point: Point | null; away: number } = { point: null, away: Infinity };
  for (const point of points) {
    const away = distance(point, guess);
    if (away < found.away) found = { point, away };
  }
  return found;
}
