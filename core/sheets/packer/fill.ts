import { areaOf, without, type Rect } from './rect.ts';
import type { Rule } from './rules.ts';
import type { Bin, Filled, Item, Spot } from './types.ts';

/** A sheet while it is being filled. */
export interface OpenSheet {
  readonly bin: Bin;
  readonly spots: Spot[];
  free: Rect[];
  used: number;
}

export const emptySheet = (bin: Bin): OpenSheet => ({
  bin,
  spots: [],
  free: [{ x: 0, y: 0, width: bin.width, height: bin.height }],
  used: 0,
});

export const closeSheet = ({ bin, spots, free, used }: OpenSheet): Filled => ({ bin, spots, free, used });

interface Candidate {
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
  readonly score: number;
}

/** The best place for an item by a rule; null where it fits nowhere. */
export function bestSpot(free: readonly Rect[], item: Item, rule: Rule): Candidate | null {
  const { width, height } = item;
  const mayTurn = item.mayTurn && width !== height;
  let at: Rect | null = null;
  let turned = false;
  let least = Infinity;
  for (const rect of free) {
    if (width <= rect.width && height <= rect.height) {
      const score = rule(rect, width, height);
      if (score < least) [at, turned, least] = [rect, false, score];
    }
    if (mayTurn && height <= rect.width && width <= rect.height) {
      const score = rule(rect, height, width);
      if (score < least) [at, turned, least] = [rect, true, score];
    }
  }
  return at === null ? null : { x: at.x, y: at.y, turned, score: least };
}

/** Puts an item on a sheet and takes its room. */
export function put(sheet: OpenSheet, item: Item, { x, y, turned }: Candidate): void {
  sheet.spots.push({ item, x, y, turned });
  sheet.used += item.area;
  for (const taken of roomOf(item, x, y, turned)) sheet.free = without(sheet.free, taken);
}

/** The rectangles that an item takes at a place. */
function roomOf(item: Item, x: number, y: number, turned: boolean): readonly Rect[] {
  const { width, height, cover } = item;
  if (cover === null) {
    return [turned ? { x, y, width: height, height: width } : { x, y, width, height }];
  }
  return cover.map((part) =>
    turned
      ? // A quarter turn counter-clockwise takes what is above to the left.
        { x: x + height - part.y - part.height, y: y + part.x, width: part.height, height: part.width }
      : { x: x + part.x, y: y + part.y, width: part.width, height: part.height },
  );
}

/** What an item takes, in steps². */
export const takenBy = (cover: readonly Rect[]): number => cover.reduce((sum, rect) => sum + areaOf(rect), 0);

/**
 * Puts items on the sheets in turn, each on the first that has room for it; returns those that none had room for.
 */
export function fillFirst(sheets: readonly OpenSheet[], items: readonly Item[], rule: Rule): Item[] {
  const left: Item[] = [];
  for (const item of items) {
    let placed = false;
    for (const sheet of sheets) {
      const spot = bestSpot(sheet.free, item, rule);
      if (spot === null) continue;
      put(sheet, item, spot);
      placed = true;
      break;
    }
    if (!placed) left.push(item);
  }
  return left;
}

/** The same, each on the sheet where it sits best. */
export function fillBest(sheets: readonly OpenSheet[], items: readonly Item[], rule: Rule): Item[] {
  const left: Item[] = [];
  for (const item of items) {
    let best: { readonly sheet: OpenSheet; readonly spot: Candidate } | null = null;
    for (const sheet of sheets) {
      const spot = bestSpot(sheet.free, item, rule);
      if (spot !== null && (best === null || spot.score < best.spot.score)) best = { sheet, spot };
    }
    if (best === null) left.push(item);
    else put(best.sheet, item, best.spot);
  }
  return left;
}
