import { placedFront, type PlacedDrawer } from '../fit/layout.ts';
import type { Placed } from '../fit/types.ts';
import type { Edge } from '../order/types.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import type { Column } from './columns.ts';

/** What two fronts have in common along an axis: its start and its end, mm. */
export function common(
  axis: 'x' | 'y',
  a: Placed,
  b: Placed,
): { readonly start: number; readonly end: number } {
  const size = axis === 'x' ? 'w' : 'h';
  return { start: Math.max(a[axis], b[axis]), end: Math.min(a[axis] + a[size], b[axis] + b[size]) };
}

/**
 * The drawer whose front faces an edge of another's: the next one in its column, or of the next column the
 * one that runs beside it the longest; null when there is none.
 */
export function neighborAt(
  drawer: PlacedDrawer,
  edge: Edge,
  columns: readonly Column[],
): PlacedDrawer | null {
  const index = columns.findIndex(({ drawers }) => drawers.includes(drawer));
  const own = columns[index]?.drawers ?? [];
  const place = own.indexOf(drawer);
  if (edge === 'top') return own[place - 1] ?? null;
  if (edge === 'bottom') return own[place + 1] ?? null;
  const front = placedFront(drawer);
  const beside = (columns[edge === 'left' ? index - 1 : index + 1]?.drawers ?? []).map((other) => {
    const { start, end } = common('y', front, placedFront(other));
    return { other, run: end - start };
  });
  const longest = beside.toSorted((a, b) => b.run - a.run)[0];
  return longest !== undefined && longest.run > SAME_LENGTH ? longest.other : null;
}
