import { binArea } from './open.ts';
import type { Bin, Item } from './types.ts';

/** The fewest sheets that could hold an area, whatever its shapes; of whole ones, with every offcut used. */
export interface Bound {
  readonly whole: number;
  readonly sheets: number;
}

/** The lower bound by area: no packing uses fewer sheets. Infinity where the stock is too small. */
export function areaBound(bins: readonly Bin[], items: readonly Item[]): Bound {
  const area = items.reduce((sum, item) => sum + item.area, 0);
  const offcuts = bins.filter(({ offcut }) => offcut);
  const inOffcuts = offcuts.reduce((sum, bin) => sum + binArea(bin) * bin.count, 0);
  return {
    whole: fewest(
      bins.filter(({ offcut }) => !offcut),
      area - inOffcuts,
    ),
    sheets: fewest(bins, area),
  };
}

/** How many sheets, largest first, hold an area. */
function fewest(bins: readonly Bin[], area: number): number {
  let [left, sheets] = [area, 0];
  for (const bin of bins.toSorted((a, b) => binArea(b) - binArea(a))) {
    if (left <= 0) return sheets;
    const needed = Math.min(bin.count, Math.ceil(left / binArea(bin)));
    sheets += needed;
    left -= needed * binArea(bin);
  }
  return left <= 0 ? sheets : Infinity;
}
