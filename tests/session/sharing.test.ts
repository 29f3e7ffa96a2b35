import { describe, expect, test } from 'vitest';
import { createDesignSession } from '../../core/session/design-session.ts';
import { jigSharer } from '../../core/session/jig-sharer.ts';
import { loadPaperFonts, STROKE_FONT } from '../../shared/library.ts';
import { solve } from '../jigs-cover/load-solver.ts';
import { demoDraft } from './drafts.ts';

const sharer = () => jigSharer(async () => solve);

describe('design with sharing', () => {
  test('sets drawers by fewer jigs and says which way each is left to adjust', async () => {
    const draft = { ...demoDraft(), sharing: 'fewest' as const };
    const session = createDesignSession(STROKE_FONT);
    const each = session.design(draft, 1);
    const shared = session.design(draft, 2, await sharer().share(session.toShare(draft), 'fewest'));
    const setting = (designed: typeof each) => new Set(designed.uses.map(({ jigId }) => jigId)).size;
    expect(setting(shared)).toBe(shared.sharing?.count);
    expect(setting(shared)).toBeLessThan(setting(each));
    expect(each.uses.every(({ adjustment }) => adjustment === 0)).toBe(true);
    for (const { rowId, edge, overhang, adjustment } of shared.uses) {
      expect((shared.fits[rowId]?.overhang[edge] ?? 0) - overhang).toBeCloseTo(adjustment, 6);
    }
    expect(shared.uses.some(({ adjustment }) => adjustment !== 0)).toBe(true);
  });

  test('gives what it gave before when drawers share no more', async () => {
    const draft = demoDraft();
    const session = createDesignSession(STROKE_FONT);
    const before = session.design(draft, 1);
    session.design(draft, 2, await sharer().share(session.toShare(draft), 'fewest'));
    expect(session.design(draft, 3)).toEqual({ ...before, revision: 3 });
  });

  test('writes the schedule in the order of work, with what is left to adjust, and says so first', async () => {
    const draft = demoDraft();
    const session = createDesignSession(STROKE_FONT);
    session.design(draft, 1, await sharer().share(session.toShare(draft), 'fewest'));
    const texts = new Map<string, string>();
    for await (const { files } of session.output().value?.steps({ paperFonts: loadPaperFonts }) ?? []) {
      for (const { path, content } of files) if (typeof content === 'string') texts.set(path, content);
    }
    const [head, ...rows] = (texts.get('schedule.csv') ?? '').split(/\r?\n/);
    expect(head?.endsWith(',adjust_mm')).toBe(true);
    expect(rows.some((row) => /,-?\d+\.\d+$/.test(row))).toBe(true);
    expect(texts.get('read-first.txt')).toContain('order of work in which jigs change hands least');
  });
});

describe('jigSharer', () => {
  test('answers the same needs without working them out again, and others anew', async () => {
    const draft = demoDraft();
    const session = createDesignSession(STROKE_FONT);
    const { share } = sharer();
    session.design(draft, 1);
    const first = await share(session.toShare(draft), 'fewest');
    expect(await share(session.toShare(draft), 'fewest')).toBe(first);
    expect(await share(session.toShare({ ...draft, registration: 'corner' }), 'fewest')).not.toBe(first);
  });
});
