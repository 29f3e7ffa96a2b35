import { bestSpot, closeSheet, emptySheet, fillBest, fillFirst, put, type OpenSheet } from './fill.ts';
import type { Rule } from './rules.ts';
import type { Bin, Filled, Item, Packing } from './types.ts';

export const binArea = ({ width, height }: Bin): number => width * height;

/** Offcuts before whole sheets, larger ones before smaller. */
export const inOpeningOrder = (bins: readonly Bin[]): readonly Bin[] =>
  bins.toSorted(
    (a, b) => Number(b.offcut) - Number(a.offcut) || binArea(b) - binArea(a) || a.index - b.index,
  );

/** How an item is given to one of several sheets. */
export type Filling = typeof fillFirst;

export const FILLINGS: readonly Filling[] = [fillFirst, fillBest];

/** Packs items in the order given, opening a sheet whenever one fits on none that is open. */
export function packInOrder(
  bins: readonly Bin[],
  items: readonly Item[],
  rule: Rule,
  filling: Filling,
): Packing {
  const order = inOpeningOrder(bins);
  const counts = new Map(order.map((bin) => [bin, bin.count]));
  const open: OpenSheet[] = [];
  const openOne = (bin: Bin): OpenSheet => {
    counts.set(bin, (counts.get(bin) ?? 0) - 1);
    const sheet = emptySheet(bin);
    open.push(sheet);
    return sheet;
  };
  // Offcuts lie there anyway: each may take whatever fits.
  for (const bin of order) {
    if (!bin.offcut || bin.count === Infinity) continue;
    for (let number = 0; number < bin.count; number += 1) openOne(bin);
  }
  const left: Item[] = [];
  for (const item of items) {
    if (filling(open, [item], rule).length === 0) continue;
    const next = order.find((bin) => (counts.get(bin) ?? 0) > 0 && fits(item, bin));
    if (next === undefined) {
      left.push(item);
      continue;
    }
    const sheet = openOne(next);
    const spot = bestSpot(sheet.free, item, rule);
    if (spot === null) throw new RangeError('packInOrder: what fits an empty sheet has a spot on it');
    put(sheet, item, spot);
  }
  return { filled: open.filter(({ spots }) => spots.length > 0).map(closeSheet), left };
}

/** Whether an item fits on an empty sheet. */
export const fits = ({ width, height, mayTurn }: Item, bin: Bin): boolean =>
  (width <= bin.width && height <= bin.height) || (mayTurn && height <= bin.width && width <= bin.height);

export const itemsOn = ({ spots }: Filled): readonly Item[] => spots.map(({ item }) => item);
