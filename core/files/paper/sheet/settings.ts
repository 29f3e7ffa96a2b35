import type { SheetName, SheetSize } from './sheet-sizes.ts';

/** The shop's paper and printer. Lengths in mm. */
export interface PaperSettings {
  /** `as long as needed`: one page as large as the drawing, for a plotter or a roll. */
  readonly sheet: SheetName | SheetSize | 'as long as needed';
  /** Left blank all round. */
  readonly margin: number;
  /** By which neighbouring tiles overlap. */
  readonly overlap: number;
  /**
   * What the printer's error is made good with: nominal over measured length. `x` across the sheet's short
   * side, `y` along its long side, whichever way the page is turned.
   */
  readonly factors: { readonly x: number; readonly y: number };
}

export const USUAL_PAPER: PaperSettings = {
  sheet: 'A4 or letter',
  margin: 10,
  overlap: 10,
  factors: { x: 1, y: 1 },
};

/** Limits of the settings (requirements PDF-3, PDF-4); lengths in mm. */
export const PAPER_LIMITS = {
  margin: { min: 5, max: 40 },
  overlap: { min: 5, max: 40 },
  factor: { min: 0.97, max: 1.03 },
  /** A PDF page has sides of 14400 points at most (ISO 32000-1, annex C). */
  longestSide: 5080,
  /** Within the margins: the bars and a tile that is worth printing. */
  leastInside: 130,
} as const;
