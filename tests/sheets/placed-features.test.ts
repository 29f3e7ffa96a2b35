import { describe, expect, test } from 'vitest';
import { bounds } from '../../core/geometry/measure.ts';
import { withoutDuplicates } from '../../core/files/duplicates.ts';
import { compensate } from '../../core/parts/compensate.ts';
import { checkSheet } from '../../core/sheets/check-sheet.ts';
import { withoutPause } from '../../core/sheets/packer/pausing.ts';
import { packOrder } from '../../core/sheets/pack-order.ts';
import { placedFeatures, sheetFeatures } from '../../core/sheets/placed-features.ts';
import type { PlacedPart, QuarterTurns, Sheet } from '../../core/sheets/types.ts';
import { readMachine } from '../jigs/setups.ts';
import { bar, ell, realParts, sheetOptions, stockSheet } from './sheet-parts.ts';

const [{ material, thickness } = stockSheet()] = realParts;
const planned = packOrder(realParts, [stockSheet({ material, thickness })], sheetOptions());
const sheetWith = (...placed: readonly PlacedPart[]): Sheet => ({
  stock: stockSheet(),
  placed,
  use: 0,
  offcut: null,
});

describe('placedFeatures', () => {
  // A point of the L's engraving, (60, -5) from a box that spans -20 to 100, turned by hand about the box.
  test.for([
    [0, 7 + 80, 9 + 15],
    [1, 7 + 120 - 15, 9 + 80],
    [2, 7 + 120 - 80, 9 + 120 - 15],
    [3, 7 + 15, 9 + 120 - 80],
  ] as const)('moves engraving and holes along with the outline, %i quarter turns', ([turns, x, y]) => {
    const features = placedFeatures({ part: ell('L', 1), copy: 1, turns, x: 7, y: 9 });
    const [outline, hole, stroke] = features.map(({ contour }) => contour);
    if (outline === undefined || hole?.kind !== 'circle' || stroke?.kind !== 'path') throw new Error('lost');
    expect(bounds(outline)).toEqual({ min: { x: 7, y: 9 }, max: { x: 127, y: 129 } });
    const corner = [
      { x: 27, y: 29 },
      { x: 107, y: 29 },
      { x: 107, y: 109 },
      { x: 27, y: 109 },
    ][turns];
    expect(hole.center).toEqual(corner);
    expect(hole.radius).toBe(5);
    expect(stroke.vertices[1]).toEqual({ x, y, bulge: 0 });
  });

  test('places what a machine follows about the part itself: the cut stands half a kerf out', () => {
    const machine = readMachine('laser-6');
    const part = bar('A', 100, 50, { thickness: 6 });
    const followed = compensate(part, machine).value;
    const placed: PlacedPart = { part, copy: 1, turns: 1, x: 10, y: 20 };
    const [cut] = placedFeatures(placed, followed);
    if (cut === undefined) throw new Error('no cut');
    const { min, max } = bounds(cut.contour);
    const half = machine.kerf / 2;
    expect(min.x).toBeCloseTo(10 - half, 9);
    expect(min.y).toBeCloseTo(20 - half, 9);
    expect(max.x).toBeCloseTo(60 + half, 9);
    expect(max.y).toBeCloseTo(120 + half, 9);
  });
});

describe('sheetFeatures', () => {
  test('runs engraving first and outlines last, parts in the order of the sheet', () => {
    const [sheet] = planned.value.sheets;
    if (sheet === undefined) throw new Error('no sheet');
    const operations = sheetFeatures(sheet).map(({ operation }) => operation);
    const order = ['engrave', 'drill', 'pocket', 'cut-inner', 'cut-outer'];
    expect(operations).toEqual(operations.toSorted((a, b) => order.indexOf(a) - order.indexOf(b)));
    expect(new Set(operations).has('engrave')).toBe(true);
    const outers = sheetFeatures(sheet).filter(({ operation }) => operation === 'cut-outer');
    expect(outers.map(({ contour }) => bounds(contour).min)).toEqual(
      sheet.placed.map((placed) => bounds(...placedFeatures(placed).map(({ contour }) => contour)).min),
    );
  });

  test('DXF-6: no two segments of one operation of a merged sheet run over each other', () => {
    for (const sheet of planned.value.sheets) {
      const own = sheet.placed.flatMap(({ part }) => withoutDuplicates(part.features).findings);
      const { removed, findings } = withoutDuplicates(sheetFeatures(sheet));
      expect(removed).toBe(0);
      expect(findings.length).toBe(own.length);
    }
  });
});

describe('checkSheet', () => {
  const at = (x: number, y: number, turns: QuarterTurns = 0, copy = 1): PlacedPart => ({
    part: ell('L', 2),
    copy,
    turns,
    x,
    y,
  });
  const codes = (sheet: Sheet, spacing = 6) =>
    withoutPause(checkSheet(sheet, 1, spacing)).map(({ code }) => code);

  test('passes two Ls that lie in each other, and tells when they are nearer than asked for', () => {
    expect(codes(sheetWith(at(10, 10), at(56, 10, 2, 2)))).toEqual([]);
    expect(codes(sheetWith(at(10, 10), at(55, 10, 2, 2)))).toEqual(['sheets/too-near']);
  });

  test('tells when parts overlap, and when a cut runs through the engraving of another', () => {
    const crossing = sheetWith(at(10, 10), { part: bar('B', 20, 200), copy: 1, turns: 0, x: 60, y: 5 });
    expect(codes(crossing)).toEqual(['sheets/too-near', 'sheets/cut-crosses-engraving']);
  });
});
