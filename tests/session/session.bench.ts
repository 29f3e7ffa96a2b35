import { bench, describe } from 'vitest';
import type { Draft } from '../../core/project/draft.ts';
import { createDesignSession } from '../../core/session/design-session.ts';
import { draftReader } from '../../core/session/draft-reader.ts';
import { fitter } from '../../core/session/fitter.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { demoDraft, largeDraft } from './drafts.ts';

// A cell is changed to and fro, as somebody types; compare the lines of one group, they are ratios.
const few = { iterations: 10, time: 0, warmupIterations: 2, warmupTime: 0 };

/** Drafts that differ in one cell of one row in the middle, in turn. */
function edits(draft: Draft): () => Draft {
  const index = Math.floor(draft.rows.length / 2);
  const row = draft.rows[index];
  if (row === undefined) throw new RangeError('the draft has no rows');
  const changed = ['14', '14 1/2', '15 1/4'].map((width) => ({
    ...draft,
    rows: draft.rows.with(index, { ...row, cells: { ...row.cells, opening_w: width } }),
  }));
  let turn = 0;
  return () => {
    turn += 1;
    return changed[turn % changed.length] ?? draft;
  };
}

describe.each([
  { drawers: 36, draft: demoDraft() },
  { drawers: 500, draft: largeDraft(500) },
])('$drawers drawers', ({ draft }) => {
  const next = edits(draft);

  describe('one cell to fits', () => {
    bench(
      'a fresh session',
      () => {
        const given = next();
        fitter().fit(draftReader().read(given).value, given.standard);
      },
      few,
    );
    const reader = draftReader();
    const fits = fitter();
    bench(
      'the session that is open',
      () => {
        const given = next();
        fits.fit(reader.read(given).value, given.standard);
        reader.endRound();
        fits.endRound();
      },
      few,
    );
  });

  describe('one cell to the whole design', () => {
    bench(
      'a fresh session',
      () => {
        createDesignSession(STROKE_FONT).design(next(), 1);
      },
      few,
    );
    const session = createDesignSession(STROKE_FONT);
    bench(
      'the session that is open',
      () => {
        session.design(next(), 1);
      },
      few,
    );
  });
});
