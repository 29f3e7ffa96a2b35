import { mkdirSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { hashOf } from '../../electron/files/read-document.ts';
import { diskRecovery } from '../../electron/messages/disk-recovery.ts';
import { createGrants } from '../../electron/messages/grants.ts';
import { temporaryFolder } from '../cli/temporary.ts';

const root = temporaryFolder();
let next = 0;

/** A folder, and runs of the program that use it one after the other. */
function runs() {
  const folder = join(root, String((next += 1)));
  const hashes = new Map<string, string>();
  return {
    folder,
    hashes,
    start: () => {
      const grants = createGrants();
      return { grants, recovery: diskRecovery({ folder: join(folder, 'kept'), grants, hashes }) };
    },
  };
}

const WORK = { name: 'kitchen', handle: null, text: '{"½":1}' };

describe('diskRecovery', () => {
  test('hands the next run what this one left behind', async () => {
    const { start } = runs();
    const first = start();
    expect(await first.recovery.kept()).toBeNull();
    await first.recovery.keep({ ...WORK, text: 'older' });
    await first.recovery.keep(WORK);
    expect(await start().recovery.kept()).toEqual(WORK);
  });

  test('leaves nothing after it was told to forget, or that all is settled', async () => {
    const { start, folder } = runs();
    const first = start();
    await first.recovery.keep(WORK);
    await first.recovery.forget();
    expect(await start().recovery.kept()).toBeNull();
    await start().recovery.keep(WORK);
    const third = start();
    expect(await third.recovery.kept()).toEqual(WORK);
    await third.recovery.settle();
    expect(readdirSync(join(folder, 'kept'))).toEqual([]);
  });

  test('keeps what an earlier run left until it was asked for, and through a start that only forgets', async () => {
    const { start } = runs();
    await start().recovery.keep(WORK);
    await start().recovery.forget();
    await start().recovery.settle();
    const third = start();
    expect(await third.recovery.kept()).toEqual(WORK);
    // As a page does that shows a saved order while it asks whether to take the old work up again.
    await third.recovery.forget();
    expect(await start().recovery.kept()).toEqual(WORK);
  });

  test('lets new work take the place of old work that was asked for', async () => {
    const { start } = runs();
    await start().recovery.keep(WORK);
    const second = start();
    await second.recovery.kept();
    await second.recovery.keep({ ...WORK, text: 'newer' });
    await second.recovery.forget();
    expect(await start().recovery.kept()).toBeNull();
  });

  test('hands a page that is loaded again its own work', async () => {
    const { recovery } = runs().start();
    await recovery.kept();
    await recovery.keep(WORK);
    expect(await recovery.kept()).toEqual(WORK);
  });

  test('gives the file with it only if the file is still what it was', async () => {
    const { start, folder, hashes } = runs();
    mkdirSync(folder);
    const path = join(folder, 'kitchen.overhang');
    writeFileSync(path, 'saved');
    hashes.set(path, hashOf(Buffer.from('saved')));
    const first = start();
    await first.recovery.keep({ ...WORK, handle: first.grants.grant(path) });
    const second = start();
    const same = await second.recovery.kept();
    expect(second.grants.pathOf(same?.handle ?? '')).toBe(path);
    writeFileSync(path, 'changed by someone else');
    expect(await start().recovery.kept()).toEqual(WORK);
  });

  test.each(['', '{"format":"overhang-recovery"', '{"format":"overhang-recovery","version":2}'])(
    'counts %j as nothing',
    async (text) => {
      const { start, folder } = runs();
      mkdirSync(join(folder, 'kept'), { recursive: true });
      writeFileSync(join(folder, 'kept/unsaved.json'), text);
      expect(await start().recovery.kept()).toBeNull();
    },
  );

  test.skipIf(process.platform === 'win32')('is readable by its owner only', async () => {
    const { start, folder } = runs();
    await start().recovery.keep(WORK);
    expect(statSync(join(folder, 'kept')).mode & 0o077).toBe(0);
    expect(statSync(join(folder, 'kept/unsaved.json')).mode & 0o077).toBe(0);
  });

  test('does calls in the order in which they came', async () => {
    const { start } = runs();
    const { recovery } = start();
    await Promise.all([
      recovery.keep({ ...WORK, text: 'x'.repeat(2_000_000) }),
      recovery.forget(),
      recovery.keep({ ...WORK, text: 'last' }),
    ]);
    expect((await start().recovery.kept())?.text).toBe('last');
  });
});
