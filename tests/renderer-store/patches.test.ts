import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createDesignSession } from '../../core/session/design-session.ts';
import { designedPatch, NO_DESIGN, patchedDesigned } from '../../renderer/worker/designed-patch.ts';
import { draftPatch, patchedDraft } from '../../renderer/worker/draft-patch.ts';
import { listPatch, patchedList, patchedRecord, recordPatch } from '../../renderer/worker/patches.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { demoDraft, firstRows } from '../session/drafts.ts';
import { anyEdit } from '../session/edits.ts';

const SEED = 20_310_605;

const ITEMS = Array.from({ length: 6 }, (_, id) => ({ id }));

describe('patches', () => {
  test('patchedList(before, listPatch(before, after)) is after, and keeps what is in both', () => {
    const list = fc.array(fc.constantFrom(...ITEMS), { maxLength: 8 });
    fc.assert(
      fc.property(list, list, (before, after) => {
        const patch = structuredClone(listPatch(before, after));
        const patched = patchedList(before, patch);
        expect(patched).toEqual(after);
        for (const [index, item] of after.entries()) {
          expect(patched[index] === item).toBe(before.includes(item));
        }
      }),
      { seed: SEED },
    );
    expect(listPatch(ITEMS, ITEMS)).toBeUndefined();
    expect(patchedList(ITEMS, undefined)).toBe(ITEMS);
    expect(() => patchedList([], [3])).toThrow(RangeError);
  });

  test('patchedRecord(before, recordPatch(before, after)) is after, and keeps what is in both', () => {
    const record = fc.dictionary(fc.constantFrom('a', 'b', 'c', 'd'), fc.constantFrom(...ITEMS));
    fc.assert(
      fc.property(record, record, (before, after) => {
        const patched = patchedRecord(before, structuredClone(recordPatch(before, after)));
        expect(patched).toEqual(after);
        for (const [key, item] of Object.entries(after)) {
          expect(patched[key] === item).toBe(before[key] === item);
        }
      }),
      { seed: SEED },
    );
  });
});

describe('patches of drafts and designs', () => {
  test('after any edits, both ends hold the same draft and the same design', () => {
    const start = firstRows(demoDraft(), 5);
    fc.assert(
      fc.property(fc.array(anyEdit, { minLength: 1, maxLength: 4 }), (edits) => {
        const session = createDesignSession(STROKE_FONT);
        let draft = start;
        let there = patchedDraft(null, structuredClone(draftPatch(null, start)));
        let designed = session.design(there, 0);
        let here = patchedDesigned(NO_DESIGN, structuredClone(designedPatch(NO_DESIGN, designed)));
        for (const edit of edits) {
          const next = edit.apply(draft);
          const before = there;
          there = patchedDraft(there, structuredClone(draftPatch(draft, next)));
          expect([edit.words, there]).toEqual([edit.words, next]);
          for (const field of ['standard', 'machine'] as const) {
            expect(there[field] === before[field]).toBe(next[field] === draft[field]);
          }
          draft = next;
          const after = session.design(there, 1);
          const shown = patchedDesigned(here, structuredClone(designedPatch(designed, after)));
          expect([edit.words, shown]).toEqual([edit.words, after]);
          for (const [index, jig] of after.jigs.entries()) {
            expect(shown.jigs[index] === here.jigs[designed.jigs.indexOf(jig)]).toBe(
              designed.jigs.includes(jig),
            );
          }
          for (const [rowId, fit] of Object.entries(after.fits)) {
            expect(shown.fits[rowId] === here.fits[rowId]).toBe(designed.fits[rowId] === fit);
          }
          [designed, here] = [after, shown];
        }
      }),
      { seed: SEED + 1, numRuns: 20 },
    );
  });

  test('patchedDraft(null, a part of a draft) throws', () => {
    expect(() => patchedDraft(null, { fields: { name: 'a' } })).toThrow(RangeError);
  });

  test('one cell of a large order sends that row and what hangs on it, no more', () => {
    const draft = demoDraft();
    const row = draft.rows[0];
    if (row === undefined) throw new RangeError('the demo order has no rows');
    const next = {
      ...draft,
      rows: draft.rows.with(0, { ...row, cells: { ...row.cells, opening_h: '5' } }),
    };
    const session = createDesignSession(STROKE_FONT);
    const first = session.design(draft, 1);
    const second = session.design(next, 2);
    const size = (payload: unknown): number => JSON.stringify(payload).length;
    expect(draftPatch(draft, next).rows?.filter((entry) => typeof entry !== 'number')).toHaveLength(1);
    expect(size(draftPatch(draft, next))).toBeLessThan(size(draftPatch(null, next)) / 10);
    const patch = designedPatch(first, second);
    expect(Object.keys(patch.fits?.set ?? {})).toEqual(['r1']);
    expect(size(patch)).toBeLessThan(size(designedPatch(NO_DESIGN, second)) / 10);
  });
});
