import type { Drawer, Edge } from '../order/types.ts';
import type { Situation } from './resolved.ts';

/**
 * Whether an edge of a drawer is at the outside of its cabinet, of so many columns, or shared with
 * another front. The sides follow the columns, the bottom the drawer's position; the top is outer for
 * the first drawer of its column, also when a given position says that more is above or below.
 */
export function situationOf(
  edge: Edge,
  drawer: Pick<Drawer, 'column' | 'position' | 'first'>,
  columns: number,
): Situation {
  const outer = {
    left: drawer.column === 1,
    right: drawer.column >= columns,
    top: drawer.first || drawer.position === 'top',
    bottom: drawer.position === 'bottom',
  };
  return outer[edge] ? 'outer' : 'shared';
}
