import { point, text } from './draw.ts';
import type { PaperItem, TextWidth } from './types.ts';
import { wrap } from './wrap.ts';

/** From one base line to the next, in sizes of the font. */
export const LINE = 1.32;

export interface Column {
  readonly x: number;
  /** Top of the first line. */
  readonly top: number;
  readonly width: number;
  readonly size: number;
  readonly bold?: boolean;
}

/** Text in a column, and where it ends: the top of what comes next. All in mm. */
export interface Flow {
  readonly items: readonly PaperItem[];
  readonly bottom: number;
}

/** A text broken into the lines of a column. */
export function paragraph(words: string, column: Column, measure: TextWidth): Flow {
  const { x, top, width, size, bold = false } = column;
  const lines = wrap(words, width, size, measure, bold);
  return {
    items: lines.map((line, index) => text(line, point(x, top - size - index * size * LINE), size, { bold })),
    bottom: top - lines.length * size * LINE,
  };
}

/** A paragraph with a mark before it: a number, or a box to tick. */
export function listed(mark: string, words: string, column: Column, measure: TextWidth): Flow {
  const indent = column.size * 1.7;
  const body = paragraph(words, { ...column, x: column.x + indent, width: column.width - indent }, measure);
  return {
    items: [
      text(mark, point(column.x, column.top - column.size), column.size, { bold: true }),
      ...body.items,
    ],
    bottom: body.bottom,
  };
}
