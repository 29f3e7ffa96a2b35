import { areaBound, type Bound } from './bound.ts';
import { compareCosts, costOf, type Cost } from './cost.ts';
import { improveOnce } from './improve.ts';
import { FILLINGS, packInOrder } from './open.ts';
import { inOrder, RANKS } from './orders.ts';
import type { Pausing } from './pausing.ts';
import { randomFrom } from './random.ts';
import { RULES } from './rules.ts';
import { freeArea, tidy } from './tidy.ts';
import type { Bin, Item, Packing } from './types.ts';

/** How long to look. */
export interface Search {
  readonly seed: number;
  /** Steps of the search after the first packings; 0: the best of those. */
  readonly effort: number;
  /** Asked before every step; the best packing so far is the answer once it says true. */
  readonly stop?: () => boolean;
  /** Told the share done, 0 to 1, and the sheets of the best packing so far. */
  readonly onProgress?: (share: number, sheets: number) => void;
}

/** Of the effort, what is still spent on a better offcut once no sheet can be saved. */
const POLISH = 0.1;

/** Steps between two reports of progress. */
const REPORT_EVERY = 500;

/** Entries of a cost that count sheets, their area and what found none. */
const SHEETS = 4;

/** Steps between two pauses: some milliseconds. */
const PAUSE_EVERY = 20;

/** Packs items on the fewest sheets that it finds, then with the largest offcut; the same seed, the same packing. */
export function* searchPacking(
  bins: readonly Bin[],
  items: readonly Item[],
  search: Search,
): Pausing<Packing> {
  const bound = areaBound(bins, items);
  const first = yield* firstPacking(bins, items, bound, search);
  let packing = first;
  const random = randomFrom(search.seed);
  let steps = search.effort;
  for (let step = 0; step < steps; step += 1) {
    if (packing.filled.length < 2 && packing.left.length === 0) break;
    if (reaches(packing, bound)) steps = Math.min(steps, step + POLISH * search.effort);
    if (search.stop?.() === true) break;
    if (step % REPORT_EVERY === 0) search.onProgress?.(step / search.effort, packing.filled.length);
    if (step % PAUSE_EVERY === 0) yield;
    packing = improveOnce(packing, random);
  }
  const found = yield* tidy(bins, packing, search.stop);
  if (packing === first) return found;
  // The search fills sheets evenly or not for its own ends: where it saved none, the first may leave the larger piece.
  const before = yield* tidy(bins, first, search.stop);
  return compareCosts(endCost(before), endCost(found)) < 0 ? before : found;
}

/** What a finished packing costs: what a search saves, then how much of the last sheet is left in one piece. */
const endCost = (packing: Packing): Cost => {
  const last = packing.filled.at(-1);
  return [...costOf(packing).slice(0, SHEETS), last === undefined ? 0 : -freeArea(last)];
};

/** The best of many orders, rules and fillings; stops at the first that reaches the bound. */
function* firstPacking(
  bins: readonly Bin[],
  items: readonly Item[],
  bound: Bound,
  search: Search,
): Pausing<Packing> {
  let best: Packing = { filled: [], left: items };
  for (const rank of RANKS) {
    const ordered = inOrder(items, rank);
    for (const rule of RULES) {
      for (const filling of FILLINGS) {
        const packing = packInOrder(bins, ordered, rule, filling);
        if (compareCosts(costOf(packing), costOf(best)) < 0) best = packing;
        if (reaches(best, bound) || search.stop?.() === true) return best;
        yield;
      }
    }
  }
  return best;
}

const reaches = ({ filled, left }: Packing, bound: Bound): boolean =>
  left.length === 0 &&
  filled.length <= bound.sheets &&
  filled.filter(({ bin }) => !bin.offcut).length <= bound.whole;
