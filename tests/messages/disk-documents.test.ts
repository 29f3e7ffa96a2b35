import { execFileSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { SaveSteps } from '../../electron/files/save-file.ts';
import { diskDocuments, type Dialogs } from '../../electron/messages/disk-documents.ts';
import { createGrants } from '../../electron/messages/grants.ts';
import { recentPaths } from '../../electron/messages/recent.ts';
import { temporaryFolder } from '../cli/temporary.ts';

const root = temporaryFolder();
let next = 0;

/** Documents in a folder of their own; `answers` are what the user picks, in turn. */
function documentsIn(answers: readonly (string | null)[] = [], steps: Partial<SaveSteps> = {}) {
  const folder = join(root, String((next += 1)));
  mkdirSync(folder);
  const left = [...answers];
  const answer = async (): Promise<string | null> => {
    const [path = null] = left.splice(0, 1);
    return path === null ? null : join(folder, path);
  };
  const dialogs: Dialogs = { openDocument: answer, saveDocument: answer, outputFolder: answer };
  const grants = createGrants();
  const remember = () =>
    diskDocuments({
      dialogs,
      grants,
      recent: recentPaths(join(folder, 'recent.json')),
      hashes: new Map(),
      changed: () => undefined,
      used: () => undefined,
      steps,
    });
  return { folder, left, grants, documents: remember(), again: remember };
}

/** What a save that went through gave. */
function savedFile(reply: Awaited<ReturnType<ReturnType<typeof diskDocuments>['save']>>) {
  if (reply === null || 'changedOutside' in reply) throw new Error('not saved');
  return reply;
}

describe('open', () => {
  test('reads the file that the user picks, and its handle opens it again without asking', async () => {
    const { folder, documents } = documentsIn(['a.csv']);
    writeFileSync(join(folder, 'a.csv'), 'cabinet');
    const first = await documents.open(null);
    expect(first).toMatchObject({ name: 'a.csv', bytes: Buffer.from('cabinet') });
    expect(await documents.open(first?.handle ?? '')).toMatchObject({ name: 'a.csv', handle: first?.handle });
  });

  test('gives null when nothing is picked', async () => {
    expect(await documentsIn([null]).documents.open(null)).toBeNull();
  });

  test('refuses a path, and a handle of another run', async () => {
    const { folder, documents } = documentsIn();
    writeFileSync(join(folder, 'a.csv'), 'cabinet');
    await expect(documents.open(join(folder, 'a.csv'))).rejects.toThrow('choose it again');
    const other = createGrants().grant(join(folder, 'a.csv'));
    await expect(documents.open(other)).rejects.toThrow('choose it again');
  });

  test('says what hinders it: gone, a folder, too large', async () => {
    const { folder, documents } = documentsIn(['gone.csv', 'folder.csv', 'large.csv']);
    mkdirSync(join(folder, 'folder.csv'));
    writeFileSync(join(folder, 'large.csv'), Buffer.alloc(32 * 1024 * 1024 + 1));
    await expect(documents.open(null)).rejects.toThrow('gone.csv cannot be read: it is not there any more');
    await expect(documents.open(null)).rejects.toThrow('folder.csv is a folder');
    await expect(documents.open(null)).rejects.toThrow(
      'large.csv is larger than 32 MB, which is the most that is read: it has 32.0 MB',
    );
  });
});

describe.skipIf(process.platform === 'win32')('open of what is no file', () => {
  test('a pipe and a device are refused at once, though they would never end', async () => {
    const { folder, documents } = documentsIn(['pipe.csv', 'zeros.csv']);
    execFileSync('mkfifo', [join(folder, 'pipe.csv')]);
    symlinkSync('/dev/zero', join(folder, 'zeros.csv'));
    await expect(documents.open(null)).rejects.toThrow('pipe.csv is no ordinary file');
    await expect(documents.open(null)).rejects.toThrow('zeros.csv is no ordinary file');
  });
});

describe('save', () => {
  test('asks once, then saves under the handle', async () => {
    const { folder, left, documents } = documentsIn(['a.overhang', 'never.overhang']);
    const saved = savedFile(await documents.save(null, 'a.overhang', '{"a":1}'));
    await documents.save(saved.handle, 'a.overhang', '{"a":2}');
    expect(readFileSync(join(folder, 'a.overhang'), 'utf8')).toBe('{"a":2}');
    expect(left).toEqual(['never.overhang']);
  });

  test('never puts a project in the place of the table that it was made of', async () => {
    const { folder, documents } = documentsIn(['a.csv', 'a.overhang']);
    writeFileSync(join(folder, 'a.csv'), 'cabinet');
    const opened = await documents.open(null);
    const saved = savedFile(await documents.save(opened?.handle ?? '', 'a.overhang', '{}'));
    expect(saved.name).toBe('a.overhang');
    expect(readFileSync(join(folder, 'a.csv'), 'utf8')).toBe('cabinet');
  });

  test('adds the extension that was left out, but not over a file that the dialog did not ask about', async () => {
    const { folder, documents } = documentsIn(['a', 'b']);
    writeFileSync(join(folder, 'b.overhang'), 'old');
    expect(savedFile(await documents.save(null, 'x.overhang', '{}')).name).toBe('a.overhang');
    await expect(documents.save(null, 'x.overhang', '{}')).rejects.toThrow('b.overhang exists');
    expect(readFileSync(join(folder, 'b.overhang'), 'utf8')).toBe('old');
  });

  test('says what hinders it and writes nothing', async () => {
    const { folder, documents } = documentsIn(['no/such/folder/a.overhang', null]);
    await expect(documents.save(null, 'a.overhang', '{}')).rejects.toThrow(
      'a.overhang cannot be saved: it is not there any more',
    );
    expect(await documents.save(null, 'a.overhang', '{}')).toBeNull();
    expect(existsSync(join(folder, 'no'))).toBe(false);
  });
});

const refused = (code: string) => async (): Promise<never> => {
  throw Object.assign(new Error(code), { code });
};

describe('save, when it cannot be', () => {
  test.each([
    ['ENOSPC', 'the disk is full; free some room there, or choose another disk'],
    ['EDQUOT', 'the disk quota is used up'],
    ['EROFS', 'the disk is read-only; choose another place'],
    ['EACCES', 'the system does not allow it; ask for the rights to it, or choose another place'],
  ])('says so in words at %s, and leaves the old file as it was and nothing else', async (code, words) => {
    for (const steps of [{ write: refused(code) }, { rename: refused(code) }]) {
      const { folder, documents } = documentsIn(['a.overhang'], steps);
      writeFileSync(join(folder, 'a.overhang'), 'old');
      const opened = await documents.open(null);
      await expect(documents.save(opened?.handle ?? '', 'a.overhang', 'new')).rejects.toThrow(
        `a.overhang cannot be saved: ${words}`,
      );
      expect(readFileSync(join(folder, 'a.overhang'), 'utf8')).toBe('old');
      expect(readdirSync(folder).toSorted()).toEqual(['a.overhang', 'recent.json']);
    }
  });
});

describe('save keeps the version before', () => {
  test('beside the file, the last one only, and never of a new file', async () => {
    const { folder, documents } = documentsIn(['a.overhang']);
    const { handle } = savedFile(await documents.save(null, 'a.overhang', 'one'));
    const previous = join(folder, 'a.previous.overhang');
    expect(existsSync(previous)).toBe(false);
    for (const [text, before] of [
      ['two', 'one'],
      ['three', 'two'],
    ] as const) {
      await documents.save(handle, 'a.overhang', text);
      expect([readFileSync(join(folder, 'a.overhang'), 'utf8'), readFileSync(previous, 'utf8')]).toEqual([
        text,
        before,
      ]);
    }
    expect(readdirSync(folder).filter((name) => name.startsWith('.'))).toEqual([]);
  });
});

describe('save of a file that was changed outside', () => {
  /** A project that was opened, and then written to by another program. */
  async function changed() {
    const parts = documentsIn(['a.overhang', 'b.overhang']);
    const file = join(parts.folder, 'a.overhang');
    writeFileSync(file, 'as opened');
    const opened = await parts.documents.open(null);
    writeFileSync(file, 'of another');
    return { ...parts, file, handle: opened?.handle ?? '' };
  }

  test('is refused and told, the file untouched, however often it is tried', async () => {
    const { documents, file, handle } = await changed();
    for (let tries = 0; tries < 2; tries += 1) {
      expect(await documents.save(handle, 'a.overhang', 'mine')).toEqual({ changedOutside: 'a.overhang' });
      expect(readFileSync(file, 'utf8')).toBe('of another');
    }
  });

  test('replaces it when that was chosen, and keeps what the other wrote beside it', async () => {
    const { documents, folder, file, handle } = await changed();
    expect(await documents.save(handle, 'a.overhang', 'mine', true)).toMatchObject({ name: 'a.overhang' });
    expect(readFileSync(file, 'utf8')).toBe('mine');
    expect(readFileSync(join(folder, 'a.previous.overhang'), 'utf8')).toBe('of another');
    expect(await documents.save(handle, 'a.overhang', 'mine 2')).toMatchObject({ name: 'a.overhang' });
  });

  test('goes to another name when that was chosen, and leaves theirs', async () => {
    const { documents, folder, file } = await changed();
    expect(await documents.save(null, 'a.overhang', 'mine')).toMatchObject({ name: 'b.overhang' });
    expect([readFileSync(file, 'utf8'), readFileSync(join(folder, 'b.overhang'), 'utf8')]).toEqual([
      'of another',
      'mine',
    ]);
  });

  test('is no change when it was only touched, or is gone', async () => {
    const { documents, file, handle } = await changed();
    writeFileSync(file, 'as opened');
    expect(await documents.save(handle, 'a.overhang', 'mine')).toMatchObject({ name: 'a.overhang' });
    rmSync(file);
    expect(await documents.save(handle, 'a.overhang', 'mine')).toMatchObject({ name: 'a.overhang' });
    expect(readFileSync(file, 'utf8')).toBe('mine');
  });
});

describe('open of a file of a newer version', () => {
  test('changes nothing: neither a byte nor its time, and no file beside it', async () => {
    const { folder, documents } = documentsIn(['a.overhang']);
    const file = join(folder, 'a.overhang');
    writeFileSync(file, '{"format":"overhang-project","version":99}');
    const before = statSync(file).mtimeMs;
    await documents.open(null);
    expect(readFileSync(file, 'utf8')).toBe('{"format":"overhang-project","version":99}');
    expect(statSync(file).mtimeMs).toBe(before);
    expect(readdirSync(folder).toSorted()).toEqual(['a.overhang', 'recent.json']);
  });
});

describe('recent', () => {
  test('lists the latest first, each once, across runs, and leaves out what is gone', async () => {
    const { folder, documents, again } = documentsIn(['a.csv', 'b.csv', 'c.csv', 'a.csv']);
    for (const name of ['a', 'b', 'c']) writeFileSync(join(folder, `${name}.csv`), name);
    for (let count = 0; count < 4; count += 1) await documents.open(null);
    rmSync(join(folder, 'b.csv'));
    const listed = await again().recent();
    expect(listed.map(({ name }) => name)).toEqual(['a.csv', 'c.csv']);
    expect(listed[0]?.folder).toBe(folder);
    expect((await again().open(listed[1]?.handle ?? ''))?.name).toBe('c.csv');
    expect(readdirSync(folder).filter((name) => name.endsWith('.tmp'))).toEqual([]);
  });

  test.each(['', '{', '{"format":"overhang-recent","version":2,"paths":[]}', '[1]'])(
    'a list that cannot be read counts as empty: %j',
    async (text) => {
      const { folder, documents } = documentsIn();
      writeFileSync(join(folder, 'recent.json'), text);
      expect(await documents.recent()).toEqual([]);
    },
  );

  test('remembers ten', async () => {
    const names = Array.from({ length: 12 }, (_, index) => `${index}.csv`);
    const { folder, documents } = documentsIn(names);
    for (const name of names) {
      writeFileSync(join(folder, name), name);
      await documents.open(null);
    }
    expect((await documents.recent()).map(({ name }) => name)).toEqual(names.slice(2).reverse());
  });
});
