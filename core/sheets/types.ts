import type { Part } from '../parts/types.ts';
import type { Rect } from './packer/rect.ts';

/** A kind of sheet in stock. Sizes in mm. */
export interface StockSheet {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** How many there are; null: as many as wanted. */
  readonly count: number | null;
  /** Left over from other work: used up before whole sheets are. */
  readonly offcut: boolean;
  readonly material: string;
  readonly thickness: number;
}

/** How far a part may be turned: by quarters, end for end (the grain stays), or not at all. */
export type Turn = 'quarter' | 'half' | 'none';

export interface SheetOptions {
  /** mm. From a part to the edge of its sheet. */
  readonly edgeMargin: number;
  /** mm. Between two finished parts. */
  readonly spacing: number;
  /** mm. Full width of the cut; the spacing must be as wide. */
  readonly kerf: number;
  readonly turn: Turn;
  /** Ids of parts that may not be turned at all, whatever `turn` says. */
  readonly keepUpright: readonly string[];
  /** Any whole number; the same seed gives the same layout. */
  readonly seed: number;
  /** Steps of the search for a better layout; 0: the best first one. */
  readonly effort: number;
  /** Asked all the while; the best layout so far is the answer once it says true. */
  readonly stop?: () => boolean;
  /** Told the share done, 0 to 1, and the sheets of the best layout so far. */
  readonly onProgress?: (share: number, sheets: number) => void;
}

export type QuarterTurns = 0 | 1 | 2 | 3;

/** One copy of a part where it lies on its sheet. */
export interface PlacedPart {
  readonly part: Part;
  /** 1 for the first. */
  readonly copy: number;
  /** Counter-clockwise. */
  readonly turns: QuarterTurns;
  /** mm. The lower left corner of the turned part's box, from the sheet's lower left corner. */
  readonly x: number;
  readonly y: number;
}

/** One sheet of an order. */
export interface Sheet {
  readonly stock: StockSheet;
  /** In the order in which they should be cut: each near the one before. */
  readonly placed: readonly PlacedPart[];
  /** Share of the sheet's area that becomes parts, 0 to 1. */
  readonly use: number;
  /** mm. The largest rectangle that is left, up to the sheet's edges; null: none. */
  readonly offcut: Rect | null;
}

/** What was packed together, for it is cut from the same stock. */
export interface StockUse {
  readonly material: string;
  readonly thickness: number;
  readonly sheets: number;
  /** No layout of these boxes (of L-shaped parts: of their arms) needs fewer: by area, the spacing counted in. */
  readonly atLeast: number;
  /** Share of the area of all its sheets that becomes parts, 0 to 1. */
  readonly use: number;
}

export interface SheetPlan {
  readonly sheets: readonly Sheet[];
  readonly uses: readonly StockUse[];
  /** Copies that found no sheet; a finding tells why. */
  readonly unplaced: readonly { readonly part: Part; readonly copy: number }[];
}
