import { SAME_LENGTH } from '../units/tolerances.ts';
import type { Bounds } from './measure.ts';

/** Index pairs (lower first) of boxes that overlap or touch, found by a sweep from left to right. */
export function boxPairs(boxes: readonly Bounds[]): readonly (readonly [number, number])[] {
  const order = boxes.map((box, index) => ({ box, index })).sort((a, b) => a.box.min.x - b.box.min.x);
  const pairs: (readonly [number, number])[] = [];
  for (const [at, { box, index }] of order.entries()) {
    for (let next = at + 1; next < order.length; next += 1) {
      const other = order[next];
      if (other === undefined || other.box.min.x > box.max.x + SAME_LENGTH) break;
      const apart = other.box.min.y > box.max.y + SAME_LENGTH || box.min.y > other.box.max.y + SAME_LENGTH;
      if (!apart) pairs.push([Math.min(index, other.index), Math.max(index, other.index)]);
    }
  }
  return pairs;
}
