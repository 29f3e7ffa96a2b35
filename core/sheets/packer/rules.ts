import type { Rect } from './rect.ts';

/** How badly an item of this size sits in the lower left corner of a free rectangle; the least wins. */
export type Rule = (free: Rect, width: number, height: number) => number;

/** Ties are broken by what stands behind: sizes stay far below a million millionths of it. */
const TIE = 1e-5;

/** Rules of Jylänki 2010, section 4: by what is left of the free rectangle, and lowest first. */
export const RULES: readonly Rule[] = [
  // The least left across, on the tighter side.
  (free, width, height) => {
    const [beside, above] = [free.width - width, free.height - height];
    return Math.min(beside, above) + TIE * Math.max(beside, above);
  },
  // The least area left.
  (free, width, height) => free.width * free.height - width * height,
  // Lowest, then leftmost.
  (free, _width, height) => free.y + height + TIE * free.x,
  // The least left on the wider side.
  (free, width, height) => Math.max(free.width - width, free.height - height),
];
