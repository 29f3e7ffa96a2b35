import type { Draft } from '../../core/project/draft.ts';
import { createDesignSession } from '../../core/session/design-session.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';

/** ms. One picture of a screen that shows 60 in a second. */
const FRAME = 16;

/** What is written into one cell, over and over; the first is what the demo order's drawers are near to. */
const CELLS = {
  opening_w: ['14', '14 1/2', '15 1/4'],
  opening_h: ['5', '5 1/2', '6 1/4'],
  style: ['full overlay', 'inset', 'half overlay'],
  qty: ['1', '2', '3'],
  note: ['first', 'second', 'third'],
} as const;

/** Edits of each cell before those that are timed, and the timed ones. */
const [SETTLE, TIMED] = [30, 30];

/** Lines on one cell that is changed in an open order, again and again: the first design = 1, and the share of a frame. */
export function* edits(draft: Draft): Generator<string> {
  const session = createDesignSession(STROKE_FONT);
  const timed = (of: Draft): number => {
    const begin = performance.now();
    session.design(of, 1);
    return performance.now() - begin;
  };
  const first = timed(draft);
  const middle = draft.rows.length >> 1;
  const row = draft.rows[middle];
  if (row === undefined) throw new RangeError('edits: the draft has no rows');
  yield `one cell of ${draft.rows.length} drawers (medians of ${TIMED}): of the first design; of a frame of ${FRAME} ms`;
  for (const [column, values] of Object.entries(CELLS)) {
    const versions = values.map((value) => ({
      ...draft,
      rows: draft.rows.with(middle, { ...row, cells: { ...row.cells, [column]: value } }),
    }));
    const times = Array.from({ length: SETTLE + TIMED }, (_, turn) =>
      timed(versions[turn % versions.length] ?? draft),
    );
    const median = times.slice(SETTLE).toSorted((a, b) => a - b)[TIMED >> 1] ?? Number.NaN;
    yield `  ${column.padEnd(12)}${(median / first).toFixed(4).padStart(8)}${(median / FRAME).toFixed(2).padStart(8)}`;
  }
}
