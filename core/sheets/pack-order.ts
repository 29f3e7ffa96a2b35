import type { Finding, Outcome } from '../findings/finding.ts';
import { hasErrors } from '../findings/make.ts';
import type { Part } from '../parts/types.ts';
import { SAME_LENGTH, sameLength } from '../units/tolerances.ts';
import { nearClasses } from '../collections/near-classes.ts';
import { groupBy } from '../collections/group-by.ts';
import { blockFits, packGroup, type GroupSheet } from './pack-group.ts';
import { blockOf } from './block.ts';
import { checkOptions } from './check-options.ts';
import { checkSheet } from './check-sheet.ts';
import { withoutPause, type Pausing } from './packer/pausing.ts';
import { partShape, type PartShape } from './part-shape.ts';
import { runningOrder } from './running-order.ts';
import { noStock, shortOfStock, tooLarge } from './sheet-findings.ts';
import type { PlacedPart, Sheet, SheetOptions, SheetPlan, StockSheet, StockUse } from './types.ts';

/** Shapes worked out between two pauses. */
const SHAPES = 20;

const NOTHING: SheetPlan = { sheets: [], uses: [], unplaced: [] };

/**
 * Places the parts of an order, with all their copies, on sheets of the same material and thickness: offcuts before
 * whole sheets, the fewest whole sheets, then the fewest sheets, then the largest piece left of the last. L-shaped
 * parts are laid into each other. The same seed and effort give the same layout.
 *
 * Findings: `sheets/option`, `sheets/spacing`, `sheets/margin`, `sheets/stock-size`, `sheets/stock-count` (nothing is
 * placed); `sheets/no-stock`, `sheets/too-large`, `sheets/short-of-stock` (that part is not); `sheets/too-near` and
 * `sheets/cut-crosses-engraving` (a check of the finished layout). All of them stop an export.
 */
export const packOrder = (
  parts: readonly Part[],
  stock: readonly StockSheet[],
  options: SheetOptions,
): Outcome<SheetPlan> => withoutPause(packingOrder(parts, stock, options));

/** The same with pauses, each after at most a tenth of a second of work or so. */
export function* packingOrder(
  parts: readonly Part[],
  stock: readonly StockSheet[],
  options: SheetOptions,
): Pausing<Outcome<SheetPlan>> {
  const problems = checkOptions(stock, options);
  if (hasErrors(problems)) return { value: NOTHING, findings: problems };
  const groups: Outcome<SheetPlan>[] = [];
  for (const group of groupBy(parts, groupKey(parts)).values()) {
    groups.push(yield* planGroup(group, stock, options));
  }
  return {
    value: {
      sheets: groups.flatMap(({ value }) => value.sheets),
      uses: groups.flatMap(({ value }) => value.uses),
      unplaced: groups.flatMap(({ value }) => value.unplaced),
    },
    findings: [...problems, ...groups.flatMap(({ findings }) => findings)],
  };
}

/** Material and thickness, thicknesses that differ by float noise being one. */
function groupKey(parts: readonly Part[]): (part: Part) => string {
  const thicknessClass = nearClasses(
    parts.map(({ thickness }) => thickness),
    SAME_LENGTH,
  );
  return ({ material, thickness }) => `${thicknessClass(thickness)} ${material}`;
}

function* planGroup(
  parts: readonly Part[],
  stock: readonly StockSheet[],
  options: SheetOptions,
): Pausing<Outcome<SheetPlan>> {
  const [first] = parts;
  if (first === undefined) return { value: NOTHING, findings: [] };
  const { material, thickness } = first;
  const own = stock.filter(
    (sheet) => sheet.count !== 0 && sheet.material === material && sameLength(sheet.thickness, thickness),
  );
  const largest = own.reduce<StockSheet | undefined>(
    (most, sheet) => (most === undefined || areaOf(sheet) > areaOf(most) ? sheet : most),
    undefined,
  );
  if (largest === undefined) {
    return { value: { ...NOTHING, unplaced: parts.flatMap(allCopies) }, findings: parts.map(noStock) };
  }
  const shapes: PartShape[] = [];
  for (const part of parts) {
    shapes.push(partShape(part));
    if (shapes.length % SHAPES === 0) yield;
  }
  const fitting = shapes.filter((shape) => own.some((sheet) => blockFits(blockOf(shape), sheet, options)));
  const outsized = shapes.filter((shape) => !fitting.includes(shape));
  const packed = yield* packGroup(fitting, own, options);
  const numbers = copyNumbers();
  const sheets = packed.sheets.map((sheet) => finished(sheet, numbers));
  const use: StockUse = {
    material,
    thickness,
    sheets: sheets.length,
    atLeast: packed.atLeast,
    use: shareOf(packed.sheets),
  };
  const faults: Finding[] = [];
  for (const [index, sheet] of sheets.entries()) {
    faults.push(...(yield* checkSheet(sheet, index + 1, options.spacing)));
  }
  const short = [...groupBy(packed.left, ({ part }) => part).entries()];
  const findings: readonly Finding[] = [
    ...outsized.map((shape) => tooLarge(shape, largest, options.edgeMargin)),
    ...short.map(([part, copies]) => shortOfStock(part, copies.length)),
    ...faults,
  ];
  const unplaced = [
    ...outsized.flatMap(({ part }) => allCopies(part)),
    ...packed.left.map(({ part }) => ({ part, copy: numbers(part) })),
  ];
  return { value: { sheets, uses: [use], unplaced }, findings };
}

const allCopies = (part: Part): SheetPlan['unplaced'] =>
  Array.from({ length: part.copies }, (_, index) => ({ part, copy: index + 1 }));

/** Counts the copies of each part from 1 on. */
function copyNumbers(): (part: Part) => number {
  const counted = new Map<Part, number>();
  return (part) => {
    const copy = (counted.get(part) ?? 0) + 1;
    counted.set(part, copy);
    return copy;
  };
}

function finished(sheet: GroupSheet, numberOf: (part: Part) => number): Sheet {
  const placed = runningOrder(sheet.members).map(({ shape, turns, x, y }): PlacedPart => ({
    part: shape.part,
    copy: numberOf(shape.part),
    turns,
    x,
    y,
  }));
  return { stock: sheet.stock, placed, use: shareOf([sheet]), offcut: sheet.offcut };
}

const areaOf = ({ width, height }: StockSheet): number => width * height;

/** Share of the area of sheets that becomes parts. */
function shareOf(sheets: readonly GroupSheet[]): number {
  const total = sheets.reduce((sum, { stock }) => sum + areaOf(stock), 0);
  const shapes: readonly PartShape[] = sheets.flatMap(({ members }) => members.map(({ shape }) => shape));
  return total === 0 ? 0 : shapes.reduce((sum, { area }) => sum + area, 0) / total;
}
