/** A file with a fault, and all that is to be said of it; the severity follows from the code. */
export interface Malformed {
  readonly name: string;
  readonly csv: string;
  /** Rows that are right all the same. */
  readonly kept: number;
  readonly findings: readonly (readonly [
    code: string,
    row: number | undefined,
    column: string | undefined,
    message: string,
  ])[];
}

/** The required columns. */
export const HEAD = 'cabinet,drawer,qty,style,opening_w,opening_h';

/** A good row under them. */
export const GOOD = 'B1,top,1,inset,15-3/4,6';

/** A file of the required columns and these rows. */
export const rows = (...lines: readonly string[]): string => [HEAD, ...lines].join('\n');

/** A file with one more column, and one row that is good but for its cell there. */
export const extra = (column: string, cell: string): string => `${HEAD},${column}\n${GOOD},${cell}`;

export const ACCEPTED =
  'Accepted are cabinet, drawer, qty, style, opening_w, opening_h, room, cabinet_kind, column, position, left, right, top, bottom, front_w, front_h, box_w, box_h, box_d, front, front_thickness, species, box_side, box_front, pull, note.';
