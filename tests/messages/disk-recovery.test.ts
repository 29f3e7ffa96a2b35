import { mkdirSync, readdirSync, readFileSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { hashOf } from '../../electron/files/read-document.ts';
import { diskRecovery } from '../../electron/messages/disk-recovery.ts';
import { createGrants } from '../../electron/messages/grants.ts';
import { temporaryFolder } from '../cli/temporary.ts';
import { TAB, tabOf } from './tabs.ts';

const root = temporaryFolder();
let next = 0;

/** A folder, and runs of the program that use it one after the other. */
function runs() {
  const folder = join(root, String((next += 1)));
  const hashes = new Map<string, string>();
  const kept = join(folder, 'kept');
  return {
    folder,
    kept,
    hashes,
    files: () => readdirSync(kept).toSorted(),
    start: () => {
      const grants = createGrants();
      return { grants, recovery: diskRecovery({ folder: kept, grants, hashes }) };
    },
  };
}

const WORK = { name: 'kitchen', handle: null, text: '{"½":1}' };
const work = (text: string) => ({ ...WORK, text });
const [second, third] = [tabOf(2), tabOf(3)];

describe('diskRecovery, of one run after the other', () => {
  test('hands the next run what this one left behind', async () => {
    const { start } = runs();
    const first = start();
    expect(await first.recovery.kept(TAB, [TAB.id])).toBeNull();
    await first.recovery.keep(TAB, work('older'));
    await first.recovery.keep(TAB, WORK);
    expect(await start().recovery.kept(second, [second.id])).toEqual(WORK);
  });

  test('leaves nothing after it was told to forget, or that all is settled', async () => {
    const { start, files } = runs();
    const first = start();
    await first.recovery.keep(TAB, WORK);
    await first.recovery.forget(TAB);
    expect(await start().recovery.kept(second, [])).toBeNull();
    await start().recovery.keep(TAB, WORK);
    const later = start();
    expect(await later.recovery.kept(second, [])).toEqual(WORK);
    await later.recovery.settle(second);
    expect(files()).toEqual([]);
  });

  test('settleAll settles every tab of the run, and nothing of an earlier one that nobody was offered', async () => {
    const { start, files } = runs();
    await start().recovery.keep(third, WORK);
    const run = start();
    await run.recovery.keep(TAB, WORK);
    await run.recovery.keep(second, WORK);
    await run.recovery.settleAll();
    expect(files()).toEqual([`unsaved-${third.id}.json`]);
  });

  test('keeps what an earlier run left until it was asked for, and through a start that only forgets', async () => {
    const { start } = runs();
    await start().recovery.keep(TAB, WORK);
    await start().recovery.forget(second);
    await start().recovery.settle(second);
    const later = start();
    expect(await later.recovery.kept(third, [])).toEqual(WORK);
    // As a page does that shows a saved order while it asks whether to take the old work up again.
    await later.recovery.forget(third);
    expect(await start().recovery.kept(tabOf(4), [])).toEqual(WORK);
  });

  test('lets new work take the place of old work that was offered', async () => {
    const { start } = runs();
    await start().recovery.keep(TAB, WORK);
    const later = start();
    await later.recovery.kept(second, []);
    await later.recovery.keep(second, work('newer'));
    await later.recovery.forget(second);
    expect(await start().recovery.kept(third, [])).toBeNull();
  });

  test('gives the file with it only if the file is still what it was', async () => {
    const { start, folder, hashes } = runs();
    mkdirSync(folder);
    const path = join(folder, 'kitchen.overhang');
    writeFileSync(path, 'saved');
    hashes.set(path, hashOf(Buffer.from('saved')));
    const first = start();
    await first.recovery.keep(TAB, { ...WORK, handle: first.grants.grant(path) });
    const later = start();
    const same = await later.recovery.kept(second, []);
    expect(later.grants.pathOf(same?.handle ?? '')).toBe(path);
    writeFileSync(path, 'changed by someone else');
    expect(await start().recovery.kept(third, [])).toEqual(WORK);
  });

  test.each(['', '{"format":"overhang-recovery"', '{"format":"overhang-recovery","version":2}'])(
    'counts %j as nothing, and offers an older one that can be read',
    async (text) => {
      const { start, kept } = runs();
      await start().recovery.keep(TAB, WORK);
      utimesSync(join(kept, `unsaved-${TAB.id}.json`), 1, 1);
      writeFileSync(join(kept, `unsaved-${second.id}.json`), text);
      writeFileSync(join(kept, 'unsaved-..json'), text);
      expect(await start().recovery.kept(third, [])).toEqual(WORK);
    },
  );

  test.skipIf(process.platform === 'win32')('is readable by its owner only', async () => {
    const { start, kept, files } = runs();
    await start().recovery.keep(TAB, WORK);
    expect(statSync(kept).mode & 0o077).toBe(0);
    expect(files().map((name) => statSync(join(kept, name)).mode & 0o077)).toEqual([0]);
  });

  test('does calls in the order in which they came', async () => {
    const { start } = runs();
    const { recovery } = start();
    await Promise.all([
      recovery.keep(TAB, work('x'.repeat(2_000_000))),
      recovery.forget(TAB),
      recovery.keep(TAB, work('last')),
    ]);
    expect((await start().recovery.kept(second, []))?.text).toBe('last');
  });
});

describe('diskRecovery, of several tabs', () => {
  test('each tab has its own, and gets its own again when it is loaded again', async () => {
    const { recovery } = runs().start();
    const open = [TAB.id, second.id];
    await recovery.keep(TAB, work('one'));
    await recovery.keep(second, work('two'));
    expect((await recovery.kept(TAB, open))?.text).toBe('one');
    expect((await recovery.kept(second, open))?.text).toBe('two');
    // Loaded a second time before anybody has answered.
    expect((await recovery.kept(TAB, open))?.text).toBe('one');
  });

  test('a new tab is not offered what is open elsewhere, and writes nobody else’s file', async () => {
    const { start, kept, files } = runs();
    const { recovery } = start();
    await recovery.keep(TAB, work('one'));
    const before = readFileSync(join(kept, `unsaved-${TAB.id}.json`));
    expect(await recovery.kept(second, [TAB.id, second.id])).toBeNull();
    await recovery.keep(second, work('two'));
    await recovery.settle(second);
    expect(files()).toEqual([`unsaved-${TAB.id}.json`]);
    expect(readFileSync(join(kept, `unsaved-${TAB.id}.json`)).equals(before)).toBe(true);
  });

  test('of what was abandoned the newest is offered first, each to one tab only', async () => {
    const { start, kept } = runs();
    const { recovery } = start();
    for (const [index, tab] of [TAB, second, third].entries()) {
      await recovery.keep(tab, work(String(index)));
      utimesSync(join(kept, `unsaved-${tab.id}.json`), 1000 + index, 1000 + index);
    }
    const [a, b, c] = [tabOf(4), tabOf(5), tabOf(6)];
    // The second one is still open.
    const open = [second.id, a.id, b.id, c.id];
    const offered = await Promise.all([a, b, c].map((tab) => recovery.kept(tab, open)));
    expect(offered.map((snapshot) => snapshot?.text ?? null)).toEqual(['2', '0', null]);
  });

  test('what was offered to a tab that closed without an answer is offered again', async () => {
    const { recovery } = runs().start();
    await recovery.keep(TAB, WORK);
    expect(await recovery.kept(second, [second.id])).toEqual(WORK);
    expect(await recovery.kept(third, [second.id, third.id])).toBeNull();
    expect(await recovery.kept(third, [third.id])).toEqual(WORK);
  });

  test('work of another browser in this run is left to it, and offered after the next start', async () => {
    const { start } = runs();
    const { recovery } = start();
    const elsewhere = tabOf(2, 2);
    await recovery.keep(TAB, WORK);
    expect(await recovery.kept(elsewhere, [elsewhere.id])).toBeNull();
    expect(await start().recovery.kept(elsewhere, [elsewhere.id])).toEqual(WORK);
  });
});
