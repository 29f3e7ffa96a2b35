import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { USUAL } from '../../core/files/output-choice.ts';
import { createDesignSession } from '../../core/session/design-session.ts';
import { sessionOutput } from '../../core/session/session-output.ts';
import { jigSharer } from '../../core/session/jig-sharer.ts';
import { jigRoom } from '../../core/jigs/sharing/jig-room.ts';
import { loadPaperFonts } from '../../shared/load-paper-fonts.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { solve } from '../jigs-cover/load-solver.ts';
import { demoDraft, largeDraft } from './drafts.ts';

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
    const designed = session.design(draft, 1, await sharer().share(session.toShare(draft), 'fewest'));
    const texts = new Map<string, string>();
    const lists = { ...USUAL, kinds: ['fit', 'schedule', 'read-first'] as const };
    for await (const { files } of sessionOutput(session.whole(), lists).value?.steps({
      paperFonts: loadPaperFonts,
    }) ?? []) {
      for (const { path, content } of files) if (typeof content === 'string') texts.set(path, content);
    }
    const schedule = Papa.parse<Readonly<Record<string, string>>>(texts.get('schedule.csv') ?? '', {
      header: true,
      skipEmptyLines: true,
    }).data;
    const off = schedule.filter(({ adjust }) => adjust !== '');
    expect(off.length).toBeGreaterThan(0);
    expect(schedule.filter(({ adjust_mm }) => Number(adjust_mm) !== 0)).toEqual(off);
    // Below 0 the jig sets more than is wanted, and the front must go away from the edge.
    const away: Readonly<Record<string, readonly string[]>> = {
      bottom: ['down', 'up'],
      left: ['to the left', 'to the right'],
      right: ['to the right', 'to the left'],
    };
    for (const { edge = '', adjust_mm, adjust } of off) {
      expect(adjust).toContain(away[edge]?.[Number(adjust_mm) < 0 ? 1 : 0]);
    }
    // What a bottom jig sets too much is raised besides the start-low allowance.
    const fits = Papa.parse<Readonly<Record<string, string>>>(texts.get('fit.csv') ?? '', {
      header: true,
    }).data;
    for (const { cabinet, drawer, adjust_mm } of off.filter(({ edge }) => edge === 'bottom')) {
      const fit = fits.find((row) => row['cabinet'] === cabinet && row['drawer'] === drawer);
      const { startLow } = Object.values(designed.fits).find(
        (one) => one.drawer.cabinet === cabinet && one.drawer.drawer === drawer,
      )?.rules ?? { startLow: { value: Number.NaN } };
      expect(Number(fit?.['start_height_mm'])).toBeCloseTo(startLow.value - Number(adjust_mm), 3);
    }
    expect(texts.get('read-first.txt')).toContain('order of work in which jigs change hands least');
  });
});

describe('jigSharer', () => {
  test('works out the rooms of drawers that are alike once, and after an edit that of the drawer alone', async () => {
    const draft = largeDraft(120);
    const session = createDesignSession(STROKE_FONT);
    let rooms = 0;
    const { share, study } = jigSharer(
      async () => solve,
      (...of) => {
        rooms += 1;
        return jigRoom(...of);
      },
    );
    await share(session.toShare(draft), 'fewest');
    await study(session.toShare(draft));
    const first = rooms;
    // The demo order has 36 rows, several of them alike.
    expect(first).toBeLessThanOrEqual(36);
    const [row, ...others] = draft.rows;
    const wider = { id: row?.id ?? '', cells: { ...row?.cells, opening_w: '15 3/16' } };
    await share(session.toShare({ ...draft, rows: [wider, ...others] }), 'fewest');
    expect(rooms - first).toBe(1);
  });

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
