import type { Point } from '../../../geometry/types.ts';
import type { Box } from '../page/types.ts';
import type { Side } from './neighbors.ts';

/**
 * The corners of the overlaps that a tile has with its neighbours, in the drawing's coordinates, mm: both
 * pages of an overlap have a cross at each of its corners, and joined right they cover one another.
 */
export function matchMarks({ x, y, w, h }: Box, overlap: number, sides: ReadonlySet<Side>): readonly Point[] {
  const points = new Map<string, Point>();
  const mark = (px: number, py: number) => points.set(`${px} ${py}`, { x: px, y: py });
  const upright = { left: x + overlap, right: x + w - overlap };
  const level = { below: y + overlap, above: y + h - overlap };
  for (const side of ['left', 'right'] as const) {
    if (!sides.has(side)) continue;
    for (const px of [upright[side], side === 'left' ? x : x + w]) {
      mark(px, y);
      mark(px, y + h);
    }
  }
  for (const side of ['below', 'above'] as const) {
    if (!sides.has(side)) continue;
    for (const py of [level[side], side === 'below' ? y : y + h]) {
      mark(x, py);
      mark(x + w, py);
    }
  }
  return [...points.values()];
}
