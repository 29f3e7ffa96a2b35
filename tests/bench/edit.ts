import type { Draft } from '../../core/project/draft.ts';
import { createDesignSession } from '../../core/session/design-session.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';

/** ms. One picture of a screen that shows 60 in a second. */
const FRAME = 16;

/** Lines on one cell that is changed in an open order, to and fro: the first design = 1, and the share of a frame. */
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
  const versions = ['14', '14 1/2', '15 1/4'].map((width) => ({
    ...draft,
    rows: draft.rows.with(middle, { ...row, cells: { ...row.cells, opening_w: width } }),
  }));
  const times = Array.from({ length: 60 }, (_, turn) => timed(versions[turn % versions.length] ?? draft));
  const settled = times.slice(30).toSorted((a, b) => a - b)[15] ?? Number.NaN;
  yield `one cell of ${draft.rows.length} drawers (median of 30)`;
  yield `  of the first design   ${(settled / first).toFixed(4)}`;
  yield `  of a frame of ${FRAME} ms  ${(settled / FRAME).toFixed(2)}`;
}
