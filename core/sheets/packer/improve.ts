import { compareCosts, costOf } from './cost.ts';
import { closeSheet, emptySheet } from './fill.ts';
import { FILLINGS, inOpeningOrder, itemsOn } from './open.ts';
import { inNoisyOrder, RANKS } from './orders.ts';
import { pick, type Random } from './random.ts';
import { RULES } from './rules.ts';
import type { Filled, Packing } from './types.ts';

/** How far a rank may stray when sheets are packed anew. */
const NOISE = [0.1, 0.3, 0.6] as const;

/**
 * One step of the search: a few sheets, the emptiest mostly among them, are emptied and packed anew in an order
 * that is somewhat random. The new packing if it is no worse, else the old one.
 */
export function improveOnce(packing: Packing, random: Random): Packing {
  const { filled, left } = packing;
  const chosen = chooseSheets(filled, random);
  const before: Packing = { filled: chosen, left };
  const items = inNoisyOrder(
    [...chosen.flatMap(itemsOn), ...left],
    RANKS[pick(random, RANKS.length)] ?? (({ area }) => area),
    NOISE[pick(random, NOISE.length)] ?? 0,
    random,
  );
  const rule = RULES[pick(random, RULES.length)];
  const filling = FILLINGS[pick(random, FILLINGS.length)];
  if (rule === undefined || filling === undefined) throw new RangeError('improveOnce: no rule');
  const sheets = inOpeningOrder(chosen.map(({ bin }) => bin)).map(emptySheet);
  const after: Packing = {
    left: filling(sheets, items, rule),
    filled: sheets.filter(({ spots }) => spots.length > 0).map(closeSheet),
  };
  if (compareCosts(costOf(after), costOf(before)) > 0) return packing;
  const others = filled.filter((sheet) => !chosen.includes(sheet));
  return { filled: [...others, ...after.filled], left: after.left };
}

/** Two to four sheets; three times of four the emptiest is one of them. */
function chooseSheets(filled: readonly Filled[], random: Random): readonly Filled[] {
  const count = Math.min(filled.length, 2 + pick(random, 3));
  const chosen = new Set<Filled>();
  const emptiest = filled.reduce<Filled | undefined>(
    (least, sheet) => (least === undefined || sheet.used < least.used ? sheet : least),
    undefined,
  );
  if (emptiest !== undefined && random() < 0.75) chosen.add(emptiest);
  while (chosen.size < count) {
    const sheet = filled[pick(random, filled.length)];
    if (sheet !== undefined) chosen.add(sheet);
  }
  return [...chosen];
}
