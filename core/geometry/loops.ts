import { SAME_LENGTH } from '../units/tolerances.ts';
import { ringOf, type Segment } from './segments.ts';
import type { ClosedContour } from './types.ts';
import { distance } from './vector.ts';

/**
 * Closed segments taken apart wherever they come back to a corner, so that no loop touches itself at one:
 *
 *     ◇◇  one loop of 8 sides  →  ◇ ◇  two of 4
 */
export function looseLoops(segments: readonly Segment[]): readonly (readonly Segment[])[] {
  const loops: (readonly Segment[])[] = [];
  let open: Segment[] = [];
  for (const segment of segments) {
    open.push(segment);
    const back = open.findLastIndex(({ start }) => distance(start, segment.end) <= SAME_LENGTH);
    if (back === -1) continue;
    loops.push(open.slice(back));
    open = open.slice(0, back);
  }
  return open.length === 0 ? loops : [...loops, open];
}

/** A loop as a contour: a circle if one arc goes all round, else a ring. */
export function contourOf(loop: readonly Segment[]): ClosedContour {
  const [only] = loop;
  const whole = loop.length === 1 && only?.kind === 'arc';
  return whole ? { kind: 'circle', center: only.center, radius: only.radius } : ringOf(loop);
}
