import type { Box, PaperDrawing, TextWidth } from '../page/types.ts';
import { touches } from './touches.ts';

/** One page's share of a drawing. */
export interface Tile {
  /** 0 at the left. */
  readonly column: number;
  /** 0 at the top. */
  readonly row: number;
  /** `B2`: the row's letter from the top, the column's number from the left. */
  readonly id: string;
  /** What it shows, in the drawing's coordinates, mm. */
  readonly shows: Box;
}

/** A drawing cut up into pages. */
export interface Tiling {
  readonly columns: number;
  readonly rows: number;
  readonly overlap: number;
  /** Row by row from the top; without those that would be blank. */
  readonly tiles: readonly Tile[];
}

export interface Window {
  readonly w: number;
  readonly h: number;
}

/** How many windows cover a length, each overlapping the next. */
const countAcross = (length: number, window: number, overlap: number): number =>
  length <= window + 1e-9 ? 1 : Math.ceil((length - overlap) / (window - overlap) - 1e-9);

/**
 * The tiles of a drawing for windows of a size, neighbours overlapping by so much, the whole in their middle
 * (requirement PDF-3). Lengths in mm.
 */
export function tileDrawing(
  { frame, items }: PaperDrawing,
  window: Window,
  overlap: number,
  measure: TextWidth,
): Tiling {
  if (!(overlap >= 0 && window.w > 2 * overlap && window.h > 2 * overlap)) {
    throw new RangeError(`tileDrawing: windows of ${window.w} x ${window.h} cannot overlap by ${overlap}`);
  }
  const columns = countAcross(frame.w, window.w, overlap);
  const rows = countAcross(frame.h, window.h, overlap);
  const [pitchX, pitchY] = [window.w - overlap, window.h - overlap];
  const left = frame.x + frame.w / 2 - (columns * pitchX + overlap) / 2;
  const top = frame.y + frame.h / 2 + (rows * pitchY + overlap) / 2;
  const tiles = Array.from({ length: rows * columns }, (_, index): Tile => {
    const [row, column] = [Math.floor(index / columns), index % columns];
    return {
      row,
      column,
      id: `${rowName(row)}${column + 1}`,
      shows: { x: left + column * pitchX, y: top - window.h - row * pitchY, w: window.w, h: window.h },
    };
  });
  return { columns, rows, overlap, tiles: tiles.filter(({ shows }) => touches(items, shows, measure)) };
}

/** A, B, ... Z, AA, AB, ... */
function rowName(row: number): string {
  const last = String.fromCharCode('A'.charCodeAt(0) + (row % 26));
  return row < 26 ? last : `${rowName(Math.floor(row / 26) - 1)}${last}`;
}
