import { memberAt } from '../fit/member-at.ts';
import type { Placed } from '../fit/types.ts';
import type { Edge } from '../order/types.ts';
import type { PlacedDrawer } from '../fit/layout.ts';
import type { Column } from './columns.ts';

/** Width in mm of the widest member at an edge of some drawers. */
const widestMember = (drawers: readonly PlacedDrawer[], edge: Edge): number =>
  Math.max(0, ...drawers.map(({ fit }) => memberAt(edge, fit.rules)));

/** The cabinet's front from outside to outside, its outer members included. */
export function outsideOf(columns: readonly Column[]): Placed {
  const [first, last] = [columns[0], columns.at(-1)];
  if (first === undefined || last === undefined) throw new RangeError('outsideOf: no columns');
  const x = first.x - widestMember(first.drawers, 'left');
  const y = -widestMember(
    columns.map((column) => column.first),
    'top',
  );
  const right = last.x + last.w + widestMember(last.drawers, 'right');
  const bottom = Math.max(...columns.map((column) => columnEnd(column)));
  return { x, y, w: right - x, h: bottom - y };
}

/** y of a column's lower end, the member under its last opening included. */
const columnEnd = ({ last }: Column): number =>
  last.opening.y + last.opening.h + memberAt('bottom', last.fit.rules);
