import { distance } from '../geometry/vector.ts';
import { turnedSize, type Member } from './block.ts';
import type { Point } from '../geometry/types.ts';

const middleOf = ({ shape, turns, x, y }: Member): Point => {
  const { width, height } = turnedSize(shape, turns);
  return { x: x + width / 2, y: y + height / 2 };
};

/** Parts of a sheet in the order in which to cut them: from the sheet's origin always to the nearest that is left. */
export function runningOrder(members: readonly Member[]): readonly Member[] {
  const left = new Map(members.map((member) => [member, middleOf(member)]));
  const ordered: Member[] = [];
  let here: Point = { x: 0, y: 0 };
  while (left.size > 0) {
    let nearest: readonly [Member, Point] | null = null;
    for (const entry of left) {
      if (nearest === null || distance(entry[1], here) < distance(nearest[1], here)) nearest = entry;
    }
    if (nearest === null) break;
    ordered.push(nearest[0]);
    here = nearest[1];
    left.delete(nearest[0]);
  }
  return ordered;
}
