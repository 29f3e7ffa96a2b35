import { point, text } from '../page/draw.ts';
import type { Box, PaperItem, TextWidth } from '../page/types.ts';

/** A line of a block of words, at its full size in mm. */
export interface BlockLine {
  readonly text: string;
  readonly size: number;
  readonly bold?: boolean;
}

const LEADING = 1.35;

/** What a block takes up at its full size, mm. */
export const blockSize = (
  lines: readonly BlockLine[],
  measure: TextWidth,
): { readonly w: number; readonly h: number } => ({
  w: Math.max(...lines.map(({ text: words, size, bold }) => measure(words, size, bold))),
  h: lines.reduce((sum, { size }) => sum + size * LEADING, 0),
});

/** A block drawn from the top of a box down, `by` times its full size. */
export function drawBlock(lines: readonly BlockLine[], { x, y, h }: Box, by: number): readonly PaperItem[] {
  let top = y + h;
  return lines.map(({ text: words, size, bold = false }) => {
    const base = top - size * by;
    top -= size * LEADING * by;
    return text(words, point(x, base), size * by, { bold, halo: true });
  });
}
