import type { ArcSegment, Segment } from './segments.ts';
import type { Point } from './types.ts';
import { polar } from './vector.ts';

/** How many equal chords a whole circle needs so that none is further than `flatness` mm from it. */
function chordsAround(radius: number, flatness: number): number {
  const step = 2 * Math.acos(Math.max(0, 1 - flatness / radius));
  return Math.max(8, Math.ceil((2 * Math.PI) / step));
}

/**
 * The corners of an arc's chords, the first included, the last left to the next segment; chords stay within
 * `flatness` mm. Corners stand at fixed angles of the circle, so that two arcs of one circle share theirs.
 */
function flattenArc(arc: ArcSegment, flatness: number): readonly Point[] {
  const step = (2 * Math.PI) / chordsAround(arc.radius, flatness);
  const way = Math.sign(arc.sweep);
  const [from, to] = [(way * arc.startAngle) / step, (way * (arc.startAngle + arc.sweep)) / step];
  const points: Point[] = [arc.start];
  // A corner nearer than a thousandth of a chord to an end would only make a splinter.
  for (let corner = Math.floor(from + 1.001); corner < to - 0.001; corner += 1) {
    points.push(polar(arc.center, arc.radius, way * corner * step));
  }
  return points;
}

/** A segment as the corners of straight sides, its end left to the next segment. */
export const flatten = (segment: Segment, flatness: number): readonly Point[] =>
  segment.kind === 'line' ? [segment.start] : flattenArc(segment, flatness);
