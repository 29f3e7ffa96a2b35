import {
  chmodSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { rename } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { saveFile } from '../../../electron/files/save-file.ts';
import { syncFolder } from '../../../electron/files/sync-folder.ts';
import { temporaryFolder } from '../../cli/temporary.ts';

const folder = temporaryFolder();
const bytes = (text: string): Uint8Array => Buffer.from(text, 'utf8');

const refused = (code: string): Error => Object.assign(new Error(code), { code });

// That a kill tears no file is in tests/cli/kill.test.ts.
describe('syncFolder', () => {
  // A folder that may be written but not read cannot be opened; what was saved in it is saved.
  test('fails for no folder that it cannot open', async () => {
    await expect(syncFolder(join(folder, 'nowhere'))).resolves.toBeUndefined();
  });
});

describe('saveFile', () => {
  test('makes a new file, replaces an old one and leaves nothing beside it', async () => {
    const place = join(folder, 'plain');
    mkdirSync(place);
    const file = join(place, 'kitchen.overhang');
    await saveFile(file, bytes('one'));
    expect(readFileSync(file, 'utf8')).toBe('one');
    await saveFile(file, bytes('two, and shorter than nothing'));
    expect(readFileSync(file, 'utf8')).toBe('two, and shorter than nothing');
    expect(readdirSync(place)).toEqual(['kitchen.overhang']);
  });

  test.skipIf(process.platform === 'win32')('keeps the mode of the file that it replaces', async () => {
    const file = join(folder, 'mode.overhang');
    writeFileSync(file, 'old');
    for (const mode of [0o600, 0o664, 0o666]) {
      chmodSync(file, mode);
      await saveFile(file, bytes('new'));
      expect(statSync(file).mode & 0o777).toBe(mode);
    }
  });

  test.skipIf(process.platform === 'win32')('gives a new file the mode that is asked for', async () => {
    const file = join(folder, 'private.json');
    await saveFile(file, bytes('{}'), 0o600);
    expect(statSync(file).mode & 0o777).toBe(0o600);
  });

  test.skipIf(process.platform === 'win32')(
    'writes the file behind a link and lets the link be',
    async () => {
      const place = join(folder, 'links');
      mkdirSync(join(place, 'far'), { recursive: true });
      writeFileSync(join(place, 'far/real.overhang'), 'old');
      symlinkSync('far/real.overhang', join(place, 'link'));
      symlinkSync('far/not-yet.overhang', join(place, 'early'));
      await saveFile(join(place, 'link'), bytes('new'));
      await saveFile(join(place, 'early'), bytes('first'));
      expect(readlinkSync(join(place, 'link'))).toBe('far/real.overhang');
      expect(readFileSync(join(place, 'far/real.overhang'), 'utf8')).toBe('new');
      expect(readFileSync(join(place, 'far/not-yet.overhang'), 'utf8')).toBe('first');
      expect(readdirSync(place).sort()).toEqual(['early', 'far', 'link']);
    },
  );

  test.each(['EPERM', 'EBUSY', 'EACCES'])(
    'tries again when the system answers %s for a while',
    async (code) => {
      const file = join(folder, `${code}.overhang`);
      let tries = 0;
      const flaky = async (from: string, to: string): Promise<void> => {
        tries += 1;
        if (tries < 3) throw refused(code);
        await rename(from, to);
      };
      await saveFile(file, bytes('there'), undefined, { rename: flaky });
      expect(tries).toBe(3);
      expect(readFileSync(file, 'utf8')).toBe('there');
    },
  );

  test('gives up at once for any other reason, and leaves the old file and nothing else', async () => {
    const place = join(folder, 'full');
    mkdirSync(place);
    const file = join(place, 'a.overhang');
    writeFileSync(file, 'old');
    let tries = 0;
    const full = async (): Promise<void> => {
      tries += 1;
      throw refused('ENOSPC');
    };
    await expect(saveFile(file, bytes('new'), undefined, { rename: full })).rejects.toThrow('ENOSPC');
    expect(tries).toBe(1);
    expect(readFileSync(file, 'utf8')).toBe('old');
    expect(readdirSync(place)).toEqual(['a.overhang']);
  });
});
