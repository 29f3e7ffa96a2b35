import { binArea } from './open.ts';
import type { Packing } from './types.ts';

/** What a packing costs, the weightiest first; less is better. */
export type Cost = readonly number[];

/**
 * Area that found no room, whole sheets, all sheets, their area, and at last how evenly they are filled: full ones
 * and a nearly empty one are better than some half full, for the nearly empty one may soon be saved, and what is
 * left of it is of more use.
 */
export function costOf({ filled, left }: Packing): Cost {
  let [whole, area, fullness] = [0, 0, 0];
  for (const { bin, used } of filled) {
    if (!bin.offcut) whole += 1;
    area += binArea(bin);
    fullness += (used * used) / binArea(bin);
  }
  const without = left.reduce((sum, item) => sum + item.area, 0);
  return [without, whole, filled.length, area, -fullness];
}

/** Below 0 if the first is better, above if the second is. */
export function compareCosts(a: Cost, b: Cost): number {
  for (const [index, value] of a.entries()) {
    const other = b[index] ?? 0;
    if (value !== other) return value - other;
  }
  return 0;
}
