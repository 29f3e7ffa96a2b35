import type { Point } from '../geometry/types.ts';
import type { FlatLine } from './keep-part.ts';

/** Steps of a mm. Ends that are the same to so much meet. */
const STEPS = 1000;

const place = ({ x, y }: Point): string => `${Math.round(x * STEPS)} ${Math.round(y * STEPS)}`;

/**
 * Lines as as few strokes of a pen: each line once, joined at ends that meet; the last point of a stroke that closes
 * is its first. Lengths in mm.
 */
export function polylines(lines: readonly FlatLine[]): readonly (readonly Point[])[] {
  const strokes: Point[][] = [];
  /** Strokes by where they end. */
  const open = new Map<string, Point[]>();
  const known = new Set<string>();
  for (const [from, to] of lines) {
    const [start, end] = [place(from), place(to)];
    if (known.has(`${start} ${end}`) || known.has(`${end} ${start}`)) continue;
    known.add(`${start} ${end}`);
    const [next, at, on] = open.has(start) ? [to, start, end] : [from, end, start];
    const stroke = open.get(at);
    if (stroke === undefined) {
      const begun = [from, to];
      strokes.push(begun);
      open.set(end, begun);
    } else {
      stroke.push(next);
      open.delete(at);
      open.set(on, stroke);
    }
  }
  return strokes;
}
