import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { packingOrder, packOrder } from '../../core/sheets/pack-order.ts';
import type { SheetOptions, SheetPlan, StockSheet, Turn } from '../../core/sheets/types.ts';
import type { Part } from '../../core/parts/types.ts';
import { layoutFaults } from './layout-faults.ts';
import { bar, ell, outlinesOf, realParts, sheetOptions, stockSheet } from './sheet-parts.ts';

const SEED = 20_261_127;

const faultsOf = ({ sheets }: SheetPlan, options: SheetOptions): readonly string[] =>
  sheets.flatMap((sheet) => layoutFaults(outlinesOf(sheet), sheet.stock, options));

const placedIds = ({ sheets }: SheetPlan): readonly string[] =>
  sheets.flatMap(({ placed }) => placed.map(({ part, copy }) => `${part.id} ${copy}`)).toSorted();

const copiesOf = (parts: readonly Part[]): readonly string[] =>
  parts.flatMap(({ id, copies }) => Array.from({ length: copies }, (_, at) => `${id} ${at + 1}`)).toSorted();

const codesOf = (parts: readonly Part[], stock: readonly StockSheet[], options = sheetOptions()) =>
  packOrder(parts, stock, options).findings.map(({ code }) => code);

describe('packOrder', () => {
  test('NEST-1: real parts keep spacing and margin by their outlines, every copy placed once', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 1, max: 15 }),
        fc.constantFrom<Turn>('quarter', 'half', 'none'),
        fc.integer(),
        fc.integer({ min: 1, max: 2 }),
        (edgeMargin, spacing, turn, seed, times) => {
          const options = sheetOptions({ edgeMargin, spacing, turn, seed, effort: 50 });
          const parts = realParts.map((part) => ({ ...part, copies: part.copies * times }));
          const [{ material, thickness } = stockSheet()] = parts;
          const { value, findings } = packOrder(parts, [stockSheet({ material, thickness })], options);
          expect(findings).toEqual([]);
          expect(faultsOf(value, options)).toEqual([]);
          expect(placedIds(value)).toEqual(copiesOf(parts));
        },
      ),
      { seed: SEED, numRuns: 12 },
    );
  });

  test('lays L-shaped parts into each other: more go on a sheet than boxes would', () => {
    // By boxes 3 x 4 of 126 x 126 is not even a sheet: (600 - 20 + 6) / 126 is 4, (400 - 20 + 6) / 126 is 3.
    const boxes = 4 * 3;
    const options = sheetOptions();
    const { value, findings } = packOrder([ell('L', 16)], [stockSheet()], options);
    expect(findings).toEqual([]);
    expect(value.sheets).toHaveLength(1);
    expect(value.sheets[0]?.placed.length).toBeGreaterThan(boxes);
    expect(faultsOf(value, options)).toEqual([]);
  });

  test('puts small parts into the notch of an L', () => {
    const stock = stockSheet({ width: 140, height: 140 });
    const options = sheetOptions();
    const { value } = packOrder([ell('L', 1), bar('block', 70, 70)], [stock], options);
    expect(value.sheets).toHaveLength(1);
    expect(faultsOf(value, options)).toEqual([]);
    const large = packOrder([ell('L', 1), bar('block', 75, 75)], [stock], options);
    expect(large.value.sheets).toHaveLength(2);
  });

  test.for([
    ['quarter', [0, 1, 2, 3]],
    ['half', [0, 2]],
    ['none', [0]],
  ] as const)('turns parts by %s only as allowed, and those kept upright never', ([turn, allowed]) => {
    const options = sheetOptions({ turn, keepUpright: ['K'] });
    const parts = [ell('L', 9), bar('K', 150, 60, { copies: 5 }), bar('B', 90, 30, { copies: 9 })];
    const { value } = packOrder(parts, [stockSheet()], options);
    const turns = value.sheets.flatMap(({ placed }) => placed);
    expect(turns.filter((one) => !(allowed as readonly number[]).includes(one.turns))).toEqual([]);
    expect(turns.filter((one) => one.part.id === 'K' && one.turns !== 0)).toEqual([]);
    expect(turns).toHaveLength(23);
    // With quarters allowed some of these are turned: else the rule would hold of itself.
    expect(turns.some((one) => one.turns !== 0)).toBe(turn !== 'none');
  });

  test('keeps materials and thicknesses apart, each on its own stock', () => {
    const parts = [
      bar('A', 100, 50),
      bar('B', 100, 50, { thickness: 3 }),
      bar('C', 90, 50, { material: 'MDF' }),
    ];
    const stock = [stockSheet(), stockSheet({ thickness: 3 }), stockSheet({ material: 'MDF' })];
    const { value, findings } = packOrder(parts, stock, sheetOptions());
    expect(findings).toEqual([]);
    expect(value.sheets).toHaveLength(3);
    for (const { stock: kind, placed } of value.sheets) {
      for (const { part } of placed) {
        expect([part.material, part.thickness]).toEqual([kind.material, kind.thickness]);
      }
    }
    expect(value.uses.map(({ sheets, atLeast }) => [sheets, atLeast])).toEqual([
      [1, 1],
      [1, 1],
      [1, 1],
    ]);
  });

  test('tells the share of a sheet that becomes parts', () => {
    const { value } = packOrder([bar('A', 200, 120, { copies: 2 })], [stockSheet()], sheetOptions());
    // 2 x 200 x 120 of 600 x 400.
    expect(value.sheets[0]?.use).toBeCloseTo(0.2, 12);
    expect(value.uses[0]?.use).toBeCloseTo(0.2, 12);
  });

  test('uses up an offcut before it takes a whole sheet', () => {
    const offcut = stockSheet({ name: 'rest', width: 250, height: 150, count: 1, offcut: true });
    const { value } = packOrder([bar('A', 200, 120)], [stockSheet(), offcut], sheetOptions());
    expect(value.sheets.map(({ stock }) => stock.name)).toEqual(['rest']);
  });

  test('gives the same plan for the same seed', () => {
    const [{ material, thickness } = stockSheet()] = realParts;
    const at = () => packOrder(realParts, [stockSheet({ material, thickness })], sheetOptions());
    expect(at()).toEqual(at());
  });

  test('orders the parts of a sheet so that each is the nearest to the one before', () => {
    const { value } = packOrder([bar('A', 60, 60, { copies: 20 })], [stockSheet()], sheetOptions());
    const middles = (value.sheets[0]?.placed ?? []).map(({ x, y }) => ({ x: x + 30, y: y + 30 }));
    expect(middles).toHaveLength(20);
    let here = { x: 0, y: 0 };
    for (const [index, middle] of middles.entries()) {
      const way = Math.hypot(middle.x - here.x, middle.y - here.y);
      for (const later of middles.slice(index)) {
        expect(Math.hypot(later.x - here.x, later.y - here.y)).toBeGreaterThanOrEqual(way - 1e-9);
      }
      here = middle;
    }
  });

  test('stops when told to, with every part placed', () => {
    let asked = 0;
    const shares: number[] = [];
    const { value } = packOrder(
      [ell('L', 20), bar('B', 150, 80, { copies: 30 })],
      [stockSheet()],
      sheetOptions({
        effort: Infinity,
        stop: () => (asked += 1) > 300,
        onProgress: (share) => shares.push(share),
      }),
    );
    expect(value.sheets.reduce((sum, { placed }) => sum + placed.length, 0)).toBe(50);
    expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true);
    expect(shares.length).toBeGreaterThan(0);
  });

  test('pauses often, whatever it is at: no stretch between pauses is a fifth of the whole', () => {
    const [{ material, thickness } = stockSheet()] = realParts;
    const stock = [stockSheet({ material, thickness })];
    const parts = realParts.map((part) => ({ ...part, copies: part.copies * 4 }));
    const options = sheetOptions();
    const whole = packOrder(parts, stock, options);
    const work = packingOrder(parts, stock, options);
    const stretches: number[] = [];
    // Time of the process itself: other work on the machine does not count.
    let since = process.cpuUsage();
    for (;;) {
      const { done, value } = work.next();
      const { user } = process.cpuUsage(since);
      stretches.push(user);
      since = process.cpuUsage();
      if (done === true) {
        expect(value).toEqual(whole);
        break;
      }
    }
    const all = stretches.reduce((sum, one) => sum + one, 0);
    expect(stretches.length).toBeGreaterThan(30);
    expect(Math.max(...stretches)).toBeLessThan(all / 5);
  });

  test('names a part that is too large, its size and the largest sheet, and places the others', () => {
    const { value, findings } = packOrder(
      [bar('long', 700, 50, { copies: 2 }), bar('A', 100, 50)],
      [stockSheet()],
      sheetOptions(),
    );
    expect(findings.map(({ code }) => code)).toEqual(['sheets/too-large']);
    expect(findings[0]?.message).toMatch(/long.*700 mm x 50 mm.*"whole sheet".*580 mm x 380 mm/);
    expect(placedIds(value)).toEqual(['A 1']);
    expect(value.unplaced.map(({ part, copy }) => `${part.id} ${copy}`)).toEqual(['long 1', 'long 2']);
  });

  test('names parts for which there is no stock, or no more of it', () => {
    expect(codesOf([bar('A', 100, 50)], [stockSheet({ material: 'MDF' })])).toEqual(['sheets/no-stock']);
    expect(codesOf([bar('A', 100, 50)], [stockSheet({ count: 0 })])).toEqual(['sheets/no-stock']);
    const { value, findings } = packOrder(
      [bar('A', 560, 300, { copies: 3 })],
      [stockSheet({ count: 2 })],
      sheetOptions(),
    );
    expect(findings.map(({ code }) => code)).toEqual(['sheets/short-of-stock']);
    expect(findings[0]?.values.copies).toBe(1);
    expect(placedIds(value)).toEqual(['A 1', 'A 2']);
    expect(value.unplaced.map(({ copy }) => copy)).toEqual([3]);
  });

  test.each([
    ['spacing under the cut', { spacing: 0.1 }, {}, 'sheets/spacing'],
    ['a margin under half the cut', { edgeMargin: 0.05 }, {}, 'sheets/margin'],
    ['a spacing below 0', { spacing: -1 }, {}, 'sheets/option'],
    ['a margin that is no number', { edgeMargin: Number.NaN }, {}, 'sheets/option'],
    ['a seed that is not whole', { seed: 0.5 }, {}, 'sheets/option'],
    ['an effort below 0', { effort: -1 }, {}, 'sheets/option'],
    ['a sheet without width', {}, { width: 0 }, 'sheets/stock-size'],
    ['half a sheet', {}, { count: 0.5 }, 'sheets/stock-count'],
  ])('refuses %s', (_, options, stock, code) => {
    const { value, findings } = packOrder([bar('A', 100, 50)], [stockSheet(stock)], sheetOptions(options));
    expect(findings.map((finding) => finding.code)).toEqual([code]);
    expect(value.sheets).toEqual([]);
  });

  test('plans nothing for nothing', () => {
    expect(packOrder([], [stockSheet()], sheetOptions())).toEqual({
      value: { sheets: [], uses: [], unplaced: [] },
      findings: [],
    });
  });
});
