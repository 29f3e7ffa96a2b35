import { SAME_LENGTH } from '../units/tolerances.ts';
import type { Bounds } from './measure.ts';

/** Whether two boxes neither overlap nor touch. */
export const boxesApart = (a: Bounds, b: Bounds): boolean =>
  a.min.x > b.max.x + SAME_LENGTH ||
  b.min.x > a.max.x + SAME_LENGTH ||
  a.min.y > b.max.y + SAME_LENGTH ||
  b.min.y > a.max.y + SAME_LENGTH;

/** Index pairs (lower first) of boxes that overlap or touch, found by a sweep from left to right. */
export function boxPairs(boxes: readonly Bounds[]): readonly (readonly [number, number])[] {
  const order = boxes.map((box, index) => ({ box, index })).sort((a, b) => a.box.min.x - b.box.min.x);
  const pairs: (readonly [number, number])[] = [];
  for (const [at, { box, index }] of order.entries()) {
    for (let next = at + 1; next < order.length; next += 1) {
      const other = order[next];
      if (other === undefined || other.box.min.x > box.max.x + SAME_LENGTH) break;
      if (!boxesApart(box, other.box))
        pairs.push([Math.min(index, other.index), Math.max(index, other.index)]);
    }
  }
  return pairs;
}
