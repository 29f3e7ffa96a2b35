import { areaBound } from './packer/bound.ts';
import { fits } from './packer/open.ts';
import { withoutPause, type Pausing } from './packer/pausing.ts';
import type { Rect } from './packer/rect.ts';
import { searchPacking, type Search } from './packer/search.ts';
import { mmOf, stepsDown, stepsUp } from './packer/steps.ts';
import { largestFree } from './packer/tidy.ts';
import type { Bin, Filled, Item } from './packer/types.ts';
import { unionArea } from './packer/union-area.ts';

/** A rectangle to place, mm. */
export interface RectangleItem {
  readonly width: number;
  readonly height: number;
  /** Whether a quarter turn is allowed. */
  readonly mayTurn: boolean;
  /** What it takes of its box, from the box's lower left corner; absent: all of it. Others may use the rest. */
  readonly cover?: readonly Rect[];
}

/** A kind of sheet, mm. */
export interface RectangleBin {
  readonly width: number;
  readonly height: number;
  /** How many there are; null: as many as wanted. */
  readonly count: number | null;
  readonly offcut: boolean;
}

export interface PackingOptions extends Search {
  /** mm. Between a thing and the edge of its sheet. */
  readonly edgeMargin: number;
  /** mm. Between two things. */
  readonly spacing: number;
}

/** A rectangle where it lies: index of the item, lower left corner from that of the sheet in mm. */
export interface PlacedRectangle {
  readonly item: number;
  readonly x: number;
  readonly y: number;
  /** Turned by a quarter, counter-clockwise. */
  readonly turned: boolean;
}

export interface PackedSheet {
  /** Index of the kind of sheet. */
  readonly bin: number;
  readonly placed: readonly PlacedRectangle[];
  /** mm. The largest rectangle that is left: spacing kept to what lies there, up to the sheet's edges; null: none. */
  readonly offcut: Rect | null;
}

export interface PackedRectangles {
  /** Offcuts first, then the fullest; the last has the most left. */
  readonly sheets: readonly PackedSheet[];
  /** Items that found no sheet. */
  readonly left: readonly number[];
  /** No packing of what was placed uses fewer sheets: by area, the spacing counted in. */
  readonly atLeast: number;
}

/**
 * Packs rectangles on the fewest sheets that it finds: whole sheets are saved before offcuts, then the largest
 * rectangle is kept free on the last. Many starts of MaxRects, then a seeded search that packs a few sheets anew.
 *
 *     packRectangles([{ width: 60, height: 40, mayTurn: true }], [{ width: 100, height: 100, count: null, offcut: false }],
 *       { edgeMargin: 5, spacing: 3, seed: 1, effort: 1000 })
 */
export const packRectangles = (
  items: readonly RectangleItem[],
  bins: readonly RectangleBin[],
  options: PackingOptions,
): PackedRectangles => withoutPause(packingRectangles(items, bins, options));

/** The same with pauses. */
export function* packingRectangles(
  items: readonly RectangleItem[],
  bins: readonly RectangleBin[],
  options: PackingOptions,
): Pausing<PackedRectangles> {
  checkNumbers(items, bins, options);
  const spacing = stepsUp(options.spacing);
  const inside = bins.map((bin, index) => binInSteps(bin, index, options));
  const all = items.map((item, index) => itemInSteps(item, index, spacing));
  const placeable = all.filter((item) => inside.some((bin) => bin.count > 0 && fits(item, bin)));
  const { filled, left } = yield* searchPacking(
    inside.filter(({ count, width, height }) => count > 0 && width > 0 && height > 0),
    placeable,
    options,
  );
  const outside = all.filter((item) => !placeable.includes(item));
  const placed = placeable.filter((item) => !left.includes(item));
  return {
    sheets: filled.map((sheet) => packedSheet(sheet, bins, options)),
    left: [...outside, ...left].map(({ index }) => index).toSorted((a, b) => a - b),
    atLeast: areaBound(inside, placed).sheets,
  };
}

/** With a spacing added to every item at its right and top, the last ones may stand out by it. */
const binInSteps = (
  { width, height, count, offcut }: RectangleBin,
  index: number,
  { edgeMargin, spacing }: PackingOptions,
): Bin => ({
  index,
  width: Math.max(0, stepsDown(width - 2 * edgeMargin) + stepsUp(spacing)),
  height: Math.max(0, stepsDown(height - 2 * edgeMargin) + stepsUp(spacing)),
  count: count ?? Infinity,
  offcut,
});

function itemInSteps(item: RectangleItem, index: number, spacing: number): Item {
  const width = stepsUp(item.width) + spacing;
  const height = stepsUp(item.height) + spacing;
  const cover =
    item.cover?.map(({ x, y, width: across, height: up }): Rect => {
      const [left, bottom] = [Math.max(0, stepsDown(x)), Math.max(0, stepsDown(y))];
      const [right, top] = [stepsUp(x + across) + spacing, stepsUp(y + up) + spacing];
      return {
        x: left,
        y: bottom,
        width: Math.min(right, width) - left,
        height: Math.min(top, height) - bottom,
      };
    }) ?? null;
  const area = cover === null ? width * height : unionArea(cover);
  return { index, width, height, mayTurn: item.mayTurn, cover, area };
}

function packedSheet(
  { bin, spots, free }: Filled,
  bins: readonly RectangleBin[],
  { edgeMargin, spacing }: PackingOptions,
): PackedSheet {
  const sheet = bins[bin.index];
  const largest = largestFree(free);
  return {
    bin: bin.index,
    placed: spots.map(({ item, x, y, turned }) => ({
      item: item.index,
      x: edgeMargin + mmOf(x),
      y: edgeMargin + mmOf(y),
      turned,
    })),
    offcut:
      largest === null || sheet === undefined ? null : offcutOf(largest, bin, sheet, edgeMargin, spacing),
  };
}

/** A free rectangle of the packer as what can be cut off: it goes on to the sheet's edge where it reaches the margin. */
function offcutOf(
  free: Rect,
  bin: Bin,
  sheet: RectangleBin,
  edgeMargin: number,
  spacing: number,
): Rect | null {
  const left = free.x === 0 ? 0 : edgeMargin + mmOf(free.x);
  const bottom = free.y === 0 ? 0 : edgeMargin + mmOf(free.y);
  const right =
    free.x + free.width === bin.width ? sheet.width : edgeMargin + mmOf(free.x + free.width) - spacing;
  const top =
    free.y + free.height === bin.height ? sheet.height : edgeMargin + mmOf(free.y + free.height) - spacing;
  return right > left && top > bottom
    ? { x: left, y: bottom, width: right - left, height: top - bottom }
    : null;
}

function checkNumbers(
  items: readonly RectangleItem[],
  bins: readonly RectangleBin[],
  { edgeMargin, spacing, seed, effort }: PackingOptions,
): void {
  for (const { width, height } of [...items, ...bins]) {
    if (!(width > 0 && height > 0 && Number.isFinite(width + height))) {
      throw new RangeError(`packRectangles: sizes must be above 0, got ${width} x ${height}`);
    }
  }
  for (const { count } of bins) {
    if (count !== null && !(Number.isInteger(count) && count >= 0)) {
      throw new RangeError(`packRectangles: a count is a whole number or null, got ${count}`);
    }
  }
  if (!(edgeMargin >= 0 && spacing >= 0 && effort >= 0 && Number.isFinite(edgeMargin + spacing + seed))) {
    throw new RangeError('packRectangles: margin, spacing and effort must be 0 or more, the seed a number');
  }
}
