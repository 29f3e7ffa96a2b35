import { membersAt, type Block, type Member } from './block.ts';
import { packingRectangles, type PackedRectangles } from './pack-rectangles.ts';
import { pairUp, singles } from './pair-up.ts';
import type { PartShape } from './part-shape.ts';
import type { Pausing } from './packer/pausing.ts';
import type { Rect } from './packer/rect.ts';
import type { SheetOptions, StockSheet } from './types.ts';

/** A sheet of one stock with what lies on it, before copies have numbers. */
export interface GroupSheet {
  readonly stock: StockSheet;
  readonly members: readonly Member[];
  readonly offcut: Rect | null;
}

export interface PackedGroup {
  readonly sheets: readonly GroupSheet[];
  readonly left: readonly PartShape[];
  readonly atLeast: number;
}

interface Attempt {
  readonly blocks: readonly Block[];
  readonly packed: PackedRectangles;
}

/** Packs the copies of parts of one stock: with parts interlocked and without, whichever needs less. */
export function* packGroup(
  shapes: readonly PartShape[],
  stock: readonly StockSheet[],
  options: SheetOptions,
): Pausing<PackedGroup> {
  const copies = shapes.map(({ part }) => part.copies);
  const single = singles(shapes, copies);
  const paired = yield* pairUp(shapes, copies, options, (block) =>
    stock.some((sheet) => blockFits(block, sheet, options)),
  );
  const pairs = paired.length < single.length;
  const share = pairs ? 0.5 : 1;
  const first = yield* attempt(single, stock, options, share, 0);
  const best = pairs ? better(first, yield* attempt(paired, stock, options, share, share), stock) : first;
  const { blocks, packed } = best;
  return {
    sheets: packed.sheets.flatMap(({ bin, placed, offcut }): readonly GroupSheet[] => {
      const kind = stock[bin];
      if (kind === undefined) return [];
      const members = placed.flatMap(({ item, x, y, turned }) => {
        const block = blocks[item];
        return block === undefined ? [] : membersAt(block, x, y, turned);
      });
      return [{ stock: kind, members, offcut }];
    }),
    left: packed.left.flatMap((item) => blocks[item]?.members.map(({ shape }) => shape) ?? []),
    // A pair takes less than its boxes, never less than its parts: the bound of single parts holds for both.
    atLeast: first.packed.atLeast,
  };
}

function* attempt(
  blocks: readonly Block[],
  stock: readonly StockSheet[],
  options: SheetOptions,
  share: number,
  done: number,
): Pausing<Attempt> {
  const { edgeMargin, spacing, seed, effort, stop, onProgress } = options;
  const items = blocks.map((block) => ({
    width: block.width,
    height: block.height,
    mayTurn: mayTurn(block, options),
    ...(block.cover.length > 1 ? { cover: block.cover } : {}),
  }));
  const packed = yield* packingRectangles(items, stock, {
    edgeMargin,
    spacing,
    seed,
    effort: Math.ceil(effort * share),
    ...(stop === undefined ? {} : { stop }),
    ...(onProgress === undefined
      ? {}
      : { onProgress: (part: number, sheets: number) => onProgress(done + part * share, sheets) }),
  });
  return { blocks, packed };
}

/** Whether a quarter turn of the whole block is allowed to all that is in it. */
const mayTurn = (block: Block, { turn, keepUpright }: SheetOptions): boolean =>
  turn === 'quarter' && block.members.every(({ shape }) => !keepUpright.includes(shape.part.id));

/** Whether a block fits on an empty sheet within its margin. */
export function blockFits(block: Block, { width, height }: StockSheet, options: SheetOptions): boolean {
  const [across, up] = [width - 2 * options.edgeMargin, height - 2 * options.edgeMargin];
  return (
    (block.width <= across && block.height <= up) ||
    (mayTurn(block, options) && block.height <= across && block.width <= up)
  );
}

/** The attempt that leaves less, needs fewer whole sheets, fewer sheets, less sheet, or leaves the larger offcut. */
function better(a: Attempt, b: Attempt, stock: readonly StockSheet[]): Attempt {
  const [costA, costB] = [costs(a, stock), costs(b, stock)];
  const at = costA.findIndex((cost, index) => cost !== costB[index]);
  return at === -1 || (costA[at] ?? 0) < (costB[at] ?? 0) ? a : b;
}

function costs({ blocks, packed }: Attempt, stock: readonly StockSheet[]): readonly number[] {
  const kinds = packed.sheets.flatMap(({ bin }) => stock[bin] ?? []);
  const unplaced = packed.left.flatMap((item) => blocks[item]?.members ?? []);
  const offcut = packed.sheets.at(-1)?.offcut ?? null;
  return [
    unplaced.reduce((sum, { shape }) => sum + shape.area, 0),
    kinds.filter((kind) => !kind.offcut).length,
    kinds.length,
    kinds.reduce((sum, { width, height }) => sum + width * height, 0),
    offcut === null ? 0 : -offcut.width * offcut.height,
  ];
}
