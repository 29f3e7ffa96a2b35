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
  if (!comesBack(segments)) return [segments];
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

/** Whether any two corners coincide; found from left to right, as long loops hardly ever do. */
function comesBack(segments: readonly Segment[]): boolean {
  const starts = segments.map(({ start }) => start).sort((a, b) => a.x - b.x);
  return starts.some((start, index) => {
    for (let next = index + 1; next < starts.length; next += 1) {
      const other = starts[next];
      if (other === undefined || other.x - start.x > SAME_LENGTH) return false;
      if (distance(start, other) <= SAME_LENGTH) return true;
    }
    return false;
  });
}

/** A loop as a contour: a circle if one arc goes all round, else a ring. */
export function contourOf(loop: readonly Segment[]): ClosedContour {
  const [only] = loop;
  const whole = loop.length === 1 && only?.kind === 'arc';
  return whole ? { kind: 'circle', center: only.center, radius: only.radius } : ringOf(loop);
}
