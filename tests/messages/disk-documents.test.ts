import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { diskDocuments, type Dialogs } from '../../electron/messages/disk-documents.ts';
import { createGrants } from '../../electron/messages/grants.ts';
import { recentPaths } from '../../electron/messages/recent.ts';
import { temporaryFolder } from '../cli/temporary.ts';

const root = temporaryFolder();
let next = 0;

/** Documents in a folder of their own; `answers` are what the user picks, in turn. */
function documentsIn(answers: readonly (string | null)[] = []) {
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
    });
  return { folder, left, grants, documents: remember(), again: remember };
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
    await expect(documents.open(null)).rejects.toThrow('large.csv is larger than 32 MB');
  });
});

describe('save', () => {
  test('asks once, then saves under the handle', async () => {
    const { folder, left, documents } = documentsIn(['a.overhang', 'never.overhang']);
    const saved = await documents.save(null, 'a.overhang', '{"a":1}');
    await documents.save(saved?.handle ?? '', 'a.overhang', '{"a":2}');
    expect(readFileSync(join(folder, 'a.overhang'), 'utf8')).toBe('{"a":2}');
    expect(left).toEqual(['never.overhang']);
  });

  test('never puts a project in the place of the table that it was made of', async () => {
    const { folder, documents } = documentsIn(['a.csv', 'a.overhang']);
    writeFileSync(join(folder, 'a.csv'), 'cabinet');
    const opened = await documents.open(null);
    const saved = await documents.save(opened?.handle ?? '', 'a.overhang', '{}');
    expect(saved?.name).toBe('a.overhang');
    expect(readFileSync(join(folder, 'a.csv'), 'utf8')).toBe('cabinet');
  });

  test('adds the extension that was left out, but not over a file that the dialog did not ask about', async () => {
    const { folder, documents } = documentsIn(['a', 'b']);
    writeFileSync(join(folder, 'b.overhang'), 'old');
    expect((await documents.save(null, 'x.overhang', '{}'))?.name).toBe('a.overhang');
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
