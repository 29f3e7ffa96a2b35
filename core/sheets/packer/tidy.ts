import { closeSheet, emptySheet, fillFirst } from './fill.ts';
import { binArea, itemsOn } from './open.ts';
import { inOrder, RANKS } from './orders.ts';
import type { Pausing } from './pausing.ts';
import { areaOf, type Rect } from './rect.ts';
import { RULES } from './rules.ts';
import type { Bin, Filled, Item, Packing } from './types.ts';

/** The largest free rectangle of a sheet; null if it is full. */
export const largestFree = (free: readonly Rect[]): Rect | null =>
  free.reduce<Rect | null>(
    (largest, rect) => (largest === null || areaOf(rect) > areaOf(largest) ? rect : largest),
    null,
  );

/** The area of the largest free rectangle, in steps². */
export const freeArea = ({ free }: Filled): number => {
  const largest = largestFree(free);
  return largest === null ? 0 : areaOf(largest);
};

/**
 * A packing with each sheet changed for the smallest kind that holds the same, and what lies on the last one put
 * together so that the largest rectangle of it stays free. Offcuts come first, then the fullest sheets.
 */
export function* tidy(
  bins: readonly Bin[],
  { filled, left }: Packing,
  stop: () => boolean = () => false,
): Pausing<Packing> {
  const counts = new Map(bins.map((bin) => [bin.index, bin.count]));
  const take = (bin: Bin, by: number): void => {
    counts.set(bin.index, (counts.get(bin.index) ?? 0) - by);
  };
  for (const { bin } of filled) take(bin, 1);
  const fitted: Filled[] = [];
  for (const sheet of filled) {
    const smaller = bins
      .filter((bin) => isCheaper(bin, sheet.bin) && (counts.get(bin.index) ?? 0) > 0)
      .toSorted((a, b) => Number(b.offcut) - Number(a.offcut) || binArea(a) - binArea(b));
    let kept = sheet;
    for (const bin of smaller) {
      const moved = binArea(bin) < sheet.used ? null : yield* repack(bin, itemsOn(sheet), stop);
      if (moved === null) continue;
      take(sheet.bin, -1);
      take(bin, 1);
      kept = moved;
      break;
    }
    fitted.push(kept);
  }
  const ordered = fitted.toSorted(
    (a, b) =>
      Number(b.bin.offcut) - Number(a.bin.offcut) || b.used / binArea(b.bin) - a.used / binArea(a.bin),
  );
  const last = ordered.at(-1);
  if (last === undefined) return { filled: ordered, left };
  const together = yield* repack(last.bin, itemsOn(last), stop);
  const better = together !== null && freeArea(together) > freeArea(last) ? together : last;
  return { filled: [...ordered.slice(0, -1), better], left };
}

/** Whether a kind of sheet should be taken instead of another that it can stand in for. */
const isCheaper = (bin: Bin, than: Bin): boolean =>
  (bin.offcut && !than.offcut) || (bin.offcut === than.offcut && binArea(bin) < binArea(than));

/**
 * Items on one sheet with the largest free rectangle that the known orders and rules leave; null if they don't fit.
 * One try is made at least.
 */
function* repack(bin: Bin, items: readonly Item[], stop: () => boolean): Pausing<Filled | null> {
  let best: Filled | null = null;
  for (const rank of RANKS) {
    const ordered = inOrder(items, rank);
    yield;
    for (const rule of RULES) {
      const sheet = emptySheet(bin);
      const fitted = fillFirst([sheet], ordered, rule).length === 0;
      const filled = closeSheet(sheet);
      if (fitted && (best === null || freeArea(filled) > freeArea(best))) best = filled;
      if (stop()) return best;
    }
  }
  return best;
}
