import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  packRectangles,
  type PackedRectangles,
  type PackingOptions,
  type RectangleBin,
  type RectangleItem,
} from '../../core/sheets/pack-rectangles.ts';
import { randomFrom } from '../../core/sheets/packer/random.ts';
import { JIG_SETS } from './jig-like.ts';
import { layoutFaults, type Outline } from './layout-faults.ts';

const SEED = 20_261_125;
const usual: PackingOptions = { edgeMargin: 10, spacing: 6, seed: 1, effort: 0 };
const plain: PackingOptions = { edgeMargin: 0, spacing: 0, seed: 1, effort: 0 };
const wanted = (width: number, height: number): RectangleBin => ({
  width,
  height,
  count: null,
  offcut: false,
});
const item = (width: number, height: number, mayTurn = true): RectangleItem => ({ width, height, mayTurn });

/** The corners of each placed rectangle, from its own sizes. */
const outlinesOn = (
  packed: PackedRectangles,
  sheet: number,
  items: readonly RectangleItem[],
): readonly Outline[] =>
  (packed.sheets[sheet]?.placed ?? []).map(({ item: index, x, y, turned }) => {
    const { width, height } = items[index] ?? { width: Number.NaN, height: Number.NaN };
    const [across, up] = turned ? [height, width] : [width, height];
    const points = [
      { x, y },
      { x: x + across, y },
      { x: x + across, y: y + up },
      { x, y: y + up },
    ];
    return { name: `item ${index}`, points };
  });

const faultsOf = (
  packed: PackedRectangles,
  items: readonly RectangleItem[],
  bins: readonly RectangleBin[],
  options: PackingOptions,
): readonly string[] =>
  packed.sheets.flatMap(({ bin }, sheet) =>
    layoutFaults(outlinesOn(packed, sheet, items), bins[bin] ?? { width: 0, height: 0 }, options),
  );

const lengths = fc.integer({ min: 50, max: 3000 }).map((tenths) => tenths / 10);
const items = fc.array(fc.record({ width: lengths, height: lengths, mayTurn: fc.boolean() }), {
  minLength: 1,
  maxLength: 40,
});
const bins = fc.array(
  fc.record({
    width: fc.integer({ min: 100, max: 700 }),
    height: fc.integer({ min: 100, max: 700 }),
    count: fc.option(fc.integer({ min: 0, max: 4 }), { nil: null }),
    offcut: fc.boolean(),
  }),
  { minLength: 1, maxLength: 3 },
);
const settings = fc.record({
  edgeMargin: fc.integer({ min: 0, max: 40 }).map((n) => n / 2),
  spacing: fc.integer({ min: 0, max: 40 }).map((n) => n / 4),
  seed: fc.integer(),
  effort: fc.constantFrom(0, 60),
});

describe('packRectangles', () => {
  test('NEST-1: keeps spacing, margin, turns and counts; every item is placed once or left', () => {
    fc.assert(
      fc.property(items, bins, settings, (given, stock, options) => {
        const packed = packRectangles(given, stock, options);
        expect(faultsOf(packed, given, stock, options)).toEqual([]);
        const placed = packed.sheets.flatMap((sheet) => sheet.placed);
        expect(placed.filter(({ item: index, turned }) => turned && given[index]?.mayTurn !== true)).toEqual(
          [],
        );
        const seen = [...placed.map(({ item: index }) => index), ...packed.left].toSorted((a, b) => a - b);
        expect(seen).toEqual([...given.keys()]);
        for (const [index, { count }] of stock.entries()) {
          const used = packed.sheets.filter(({ bin }) => bin === index).length;
          expect(used).toBeLessThanOrEqual(count ?? Infinity);
        }
        expect(packed.sheets.length).toBeGreaterThanOrEqual(packed.atLeast);
      }),
      { seed: SEED, numRuns: 150 },
    );
  });

  test('NEST-1: what is left over is empty, and keeps the spacing to what lies beside it', () => {
    fc.assert(
      fc.property(items, bins, settings, (given, stock, options) => {
        const packed = packRectangles(given, stock, options);
        for (const [sheet, { bin, offcut }] of packed.sheets.entries()) {
          if (offcut === null) continue;
          const { x, y, width, height } = offcut;
          const corners = [
            { x, y },
            { x: x + width, y },
            { x: x + width, y: y + height },
            { x, y: y + height },
          ];
          const all = [{ name: 'offcut', points: corners }, ...outlinesOn(packed, sheet, given)];
          const size = stock[bin] ?? { width: 0, height: 0 };
          const near = layoutFaults(all, size, { edgeMargin: 0, spacing: options.spacing });
          expect(near).toEqual([]);
        }
      }),
      { seed: SEED + 1, numRuns: 60 },
    );
  });

  test('NEST-1: gives the same layout for the same seed, another seed may give another', () => {
    const [given = []] = JIG_SETS;
    const at = (seed: number) => packRectangles(given, [wanted(600, 400)], { ...usual, seed, effort: 400 });
    expect(at(7)).toEqual(at(7));
    expect(at(7)).not.toEqual(at(8));
  });

  // Sheets cut up by full cuts: the pieces fit on as many sheets as they came from, so that is the optimum.
  test.for([3, 5, 8])('packs the pieces of %i cut-up sheets on one more at most', (count) => {
    const random = randomFrom(count);
    const cutUp = (width: number, height: number, depth: number): readonly RectangleItem[] => {
      if (depth === 0) return [item(width, height)];
      const at = 0.25 + random() / 2;
      const across = width > height;
      const cut = Math.round((across ? width : height) * at);
      return across
        ? [...cutUp(cut, height, depth - 1), ...cutUp(width - cut, height, depth - 1)]
        : [...cutUp(width, cut, depth - 1), ...cutUp(width, height - cut, depth - 1)];
    };
    const pieces = Array.from({ length: count }, () => cutUp(600, 400, 3)).flat();
    const { sheets, left, atLeast } = packRectangles(pieces, [wanted(600, 400)], { ...plain, effort: 3000 });
    expect(left).toEqual([]);
    expect(atLeast).toBe(count);
    expect(sheets.length).toBeLessThanOrEqual(count + 1);
  });

  test('fills a sheet with what fits exactly, in millimetres and in parts of an inch', () => {
    const quarters = Array.from({ length: 16 }, () => item(25.4 / 4 + 0.1, 25.4 / 32));
    const exact = { width: 4 * (25.4 / 4 + 0.1) + 3 * 0.2 + 2, height: (4 * 25.4) / 32 + 3 * 0.2 + 2 };
    const options = { ...plain, edgeMargin: 1, spacing: 0.2 };
    expect(packRectangles(quarters, [wanted(exact.width, exact.height)], options).sheets).toHaveLength(1);
    const short = packRectangles(quarters, [wanted(exact.width - 0.001, exact.height)], options);
    expect(short.sheets).toHaveLength(2);
  });

  test('turns an item only if it may be turned', () => {
    const narrow = [wanted(50, 200)];
    expect(packRectangles([item(150, 40)], narrow, plain).sheets[0]?.placed[0]?.turned).toBe(true);
    expect(packRectangles([item(150, 40, false)], narrow, plain).left).toEqual([0]);
  });

  test('uses up offcuts before it takes a whole sheet', () => {
    const offcut: RectangleBin = { width: 210, height: 110, count: 2, offcut: true };
    const given = Array.from({ length: 4 }, () => item(100, 100));
    const packed = packRectangles(given, [wanted(600, 400), offcut], plain);
    expect(packed.sheets.map(({ bin }) => bin)).toEqual([1, 1]);
    const more = packRectangles([...given, item(300, 200)], [wanted(600, 400), offcut], plain);
    expect(more.sheets.filter(({ bin }) => bin === 0)).toHaveLength(1);
  });

  test('takes the smallest kind of sheet that holds what is on it', () => {
    const packed = packRectangles([item(100, 80)], [wanted(600, 400), wanted(300, 200)], plain);
    expect(packed.sheets.map(({ bin }) => bin)).toEqual([1]);
  });

  test('leaves the largest piece of the last sheet whole', () => {
    // Six of 100 x 100 on 600 x 400: as one row they leave 600 x 300, and no layout leaves more.
    const given = Array.from({ length: 6 }, () => item(100, 100));
    const { offcut } = packRectangles(given, [wanted(600, 400)], plain).sheets[0] ?? {};
    expect((offcut?.width ?? 0) * (offcut?.height ?? 0)).toBe(600 * 300);
  });

  test('NEST-2: a search that saves no sheet leaves no smaller piece of the last one', () => {
    for (const [index, items] of JIG_SETS.entries()) {
      const last = (effort: number) => {
        const { sheets } = packRectangles(items, [{ width: 600, height: 400, count: null, offcut: false }], {
          edgeMargin: 10,
          spacing: 6,
          seed: 1,
          effort,
        });
        const { width = 0, height = 0 } = sheets.at(-1)?.offcut ?? {};
        return { sheets: sheets.length, left: width * height };
      };
      const [plain, searched] = [last(0), last(300)];
      expect(searched.sheets, `set ${index}`).toBeLessThanOrEqual(plain.sheets);
      if (searched.sheets === plain.sheets) {
        // Cut off to the sheet's edges, a piece may lose what the margin adds to another.
        expect(searched.left, `set ${index}`).toBeGreaterThan(plain.left * 0.93);
      }
    }
  });

  test('stops when told to, with a whole layout, and reports how far it is', () => {
    const [given = []] = JIG_SETS;
    let asked = 0;
    const shares: number[] = [];
    const packed = packRectangles(given, [wanted(600, 400)], {
      ...usual,
      effort: Infinity,
      stop: () => (asked += 1) > 900,
      onProgress: (share, sheets) => shares.push(share, sheets),
    });
    // Once more for the last look at the last sheet of the first packing, and of the best.
    expect(asked).toBe(903);
    expect(shares.length).toBeGreaterThanOrEqual(2);
    const placed = packed.sheets.reduce((sum, sheet) => sum + sheet.placed.length, 0);
    expect(placed + packed.left.length).toBe(given.length);
    expect(packed.left).toEqual([]);
    const at = { ...usual, stop: () => true };
    expect(packRectangles(given, [wanted(600, 400)], at).left).toEqual([]);
  });

  test('refuses sizes and counts that are none', () => {
    expect(() => packRectangles([item(0, 5)], [wanted(10, 10)], plain)).toThrow(/sizes must be above 0/);
    expect(() => packRectangles([item(Number.NaN, 5)], [wanted(10, 10)], plain)).toThrow(RangeError);
    expect(() => packRectangles([item(5, 5)], [{ ...wanted(9, 9), count: -1 }], plain)).toThrow(/count/);
    expect(() => packRectangles([item(5, 5)], [wanted(9, 9)], { ...plain, spacing: -1 })).toThrow(/spacing/);
  });

  test('has nothing to do without items, and leaves all without sheets', () => {
    expect(packRectangles([], [wanted(10, 10)], plain)).toEqual({ sheets: [], left: [], atLeast: 0 });
    expect(packRectangles([item(5, 5)], [], plain).left).toEqual([0]);
  });

  test.for([
    { effort: 0, most: 7.6 },
    { effort: 3000, most: 7.5 },
  ])(
    'NEST-2: 12 sets of 100 jig-like rectangles need $most sheets or fewer on average, effort $effort',
    (limit) => {
      const packed = JIG_SETS.map((set) =>
        packRectangles(set, [wanted(600, 400)], { ...usual, effort: limit.effort }),
      );
      const mean = (of: (one: PackedRectangles) => number): number =>
        packed.reduce((sum, one) => sum + of(one), 0) / packed.length;
      expect(mean(({ sheets }) => sheets.length)).toBeLessThanOrEqual(limit.most);
      // The sets are the project's own; measured 7.08 against 6.58 by area, so this holds the gap.
      expect(mean(({ sheets, atLeast }) => sheets.length - atLeast)).toBeLessThanOrEqual(0.6);
      for (const [index, one] of packed.entries()) {
        expect(faultsOf(one, JIG_SETS[index] ?? [], [wanted(600, 400)], usual)).toEqual([]);
      }
    },
  );
});
