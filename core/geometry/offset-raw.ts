import { SAME_LENGTH, SHORTEST_SEGMENT } from '../units/tolerances.ts';
import type { Piece } from './chain.ts';
import { arc, directionAt, turnBetween, type Segment } from './segments.ts';
import type { Point } from './types.ts';
import { add, angleOf, distance, scale } from './vector.ts';

/** The right-hand normal of a segment's travel at one of its ends. */
function rightOf(segment: Segment, share: 0 | 1): Point {
  const { x, y } = directionAt(segment, share);
  return { x: y, y: -x };
}

/** A segment moved `by` mm to the right of its travel; null where an arc's radius is used up. */
export function offsetSegment(segment: Segment, by: number): Segment | null {
  if (segment.kind === 'line') {
    const shift = scale(rightOf(segment, 0), by);
    return { kind: 'line', start: add(segment.start, shift), end: add(segment.end, shift) };
  }
  const radius = segment.radius + Math.sign(segment.sweep) * by;
  return radius < SHORTEST_SEGMENT / 10
    ? null
    : arc(segment.center, radius, segment.startAngle, segment.sweep);
}

/** The arc that rounds the corner between two segments on their right; null where they turn right or go on. */
export function cornerArc(before: Segment, after: Segment, by: number): Segment | null {
  const turn = turnBetween(before, after);
  // A shorter arc could not be exported: its neighbours are made to meet instead.
  if (turn * by < SHORTEST_SEGMENT) return null;
  return arc(before.end, by, angleOf(rightOf(before, 1)), turn);
}

/**
 * The raw offset of a closed run of segments, `by` mm (above 0) to the right of its travel: each segment moved,
 * an arc about each corner that turns left, and auxiliary sides that go back to the source corner where it turns
 * right or where an arc vanished. The raw line loops through itself; what it winds around is the offset area.
 *
 *        ╭──────╮
 *        │ ╭──╮ │      the corner sectors and side bands all run the same way round,
 *        │ ╰──╯ │      so no place within `by` of the source is left at winding 0
 *        ╰──────╯
 */
export function rawOffset(segments: readonly Segment[], by: number): readonly Piece[] {
  const pieces: Piece[] = [];
  let at: Point | null = null;
  const goTo = (point: Point): void => {
    if (at !== null && distance(at, point) > SAME_LENGTH / 100) {
      pieces.push({ segment: { kind: 'line', start: at, end: point }, auxiliary: true });
    }
    at = point;
  };
  const follow = (segment: Segment): void => {
    goTo(segment.start);
    pieces.push({ segment, auxiliary: false });
    at = segment.end;
  };
  for (const [index, segment] of segments.entries()) {
    const before = segments[(index + segments.length - 1) % segments.length];
    if (before === undefined) continue;
    if (at === null) at = add(segment.start, scale(rightOf(before, 1), by));
    const corner = cornerArc(before, segment, by);
    if (corner !== null) follow(corner);
    else if (turnBetween(before, segment) < 0) goTo(segment.start);
    const moved = offsetSegment(segment, by);
    if (moved !== null) {
      follow(moved);
      continue;
    }
    // The band of a vanished arc is the whole sector up to its centre.
    goTo(segment.start);
    if (segment.kind === 'arc') goTo(segment.center);
    goTo(segment.end);
  }
  return pieces;
}
