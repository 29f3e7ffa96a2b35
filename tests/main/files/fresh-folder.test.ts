import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { freshFolder } from '../../../electron/files/fresh-folder.ts';
import { temporaryFolder } from '../../cli/temporary.ts';

const folder = temporaryFolder();

describe('freshFolder', () => {
  test('shows nothing in its place before it is finished', async () => {
    const target = join(folder, 'one', 'deep');
    const fresh = await freshFolder(target);
    await fresh.write({ path: 'dxf/a.dxf', content: 'a' });
    expect(existsSync(target)).toBe(false);
    await fresh.finish();
    expect(readFileSync(join(target, 'dxf/a.dxf'), 'utf8')).toBe('a');
    expect(readdirSync(join(folder, 'one'))).toEqual(['deep']);
  });

  test('writes text as UTF-8 and bytes as they are, with their size and hash', async () => {
    const target = join(folder, 'bytes');
    const fresh = await freshFolder(target);
    const bytes = new Uint8Array([0x25, 0x50, 0x44, 0x46, 0, 255]);
    const pdf = await fresh.write({ path: 'a.pdf', content: bytes });
    const text = await fresh.write({ path: 'a.txt', content: '½' });
    await fresh.finish();
    expect(new Uint8Array(readFileSync(join(target, 'a.pdf')))).toEqual(bytes);
    expect(pdf).toMatchObject({ size: 6, sha256: createHash('sha256').update(bytes).digest('hex') });
    expect(text.size).toBe(2);
  });

  test('leaves no trace when it is discarded, and the old folder as it was', async () => {
    const target = join(folder, 'two');
    mkdirSync(target);
    writeFileSync(join(target, 'manifest.json'), '{ "format": "overhang-manifest" }');
    const fresh = await freshFolder(target);
    await fresh.write({ path: 'b.svg', content: 'b' });
    await fresh.discard();
    expect(readdirSync(target)).toEqual(['manifest.json']);
    expect(readdirSync(folder).filter((name) => name.startsWith('.'))).toEqual([]);
  });

  test('refuses when something else has come to stand in its place meanwhile', async () => {
    const target = join(folder, 'three');
    const fresh = await freshFolder(target);
    mkdirSync(target);
    writeFileSync(join(target, 'other.txt'), 'theirs');
    await expect(fresh.finish()).rejects.toThrow(/holds other files/);
    await fresh.discard();
    expect(readdirSync(target)).toEqual(['other.txt']);
  });

  test('refuses to take the place of a folder of ours in which others have put files, and names them', async () => {
    const target = join(folder, 'shared');
    const make = async (): Promise<void> => {
      const fresh = await freshFolder(target);
      await fresh.write({ path: 'dxf/a.dxf', content: 'a' });
      const files = [{ path: 'dxf/a.dxf', size: 1 }];
      const content = JSON.stringify({ format: 'overhang-manifest', files });
      await fresh.write({ path: 'manifest.json', content });
      await fresh.finish();
    };
    await make();
    // Systems leave these behind by themselves.
    writeFileSync(join(target, '.DS_Store'), '');
    await make();
    expect(readdirSync(target).toSorted()).toEqual(['dxf', 'manifest.json']);
    const notes = ['notes.txt', 'dxf/B1.nc', 'dxf/B2.nc', 'dxf/B3.nc'];
    for (const name of notes) writeFileSync(join(target, name), 'theirs');
    await expect(freshFolder(target)).rejects.toThrow(
      'shared holds files that this program did not write (dxf/B1.nc, dxf/B2.nc, dxf/B3.nc and 1 more), which would be lost; move them out of it, or name a new place',
    );
    for (const name of notes) expect(readFileSync(join(target, name), 'utf8')).toBe('theirs');
  });

  test.skipIf(process.platform === 'win32')(
    'writes the folder behind a link and lets the link be',
    async () => {
      const place = join(folder, 'linked');
      mkdirSync(join(place, 'far'), { recursive: true });
      symlinkSync('far', join(place, 'latest'));
      const fresh = await freshFolder(join(place, 'latest'));
      await fresh.write({ path: 'a.csv', content: 'a' });
      await fresh.finish();
      expect(readlinkSync(join(place, 'latest'))).toBe('far');
      expect(readFileSync(join(place, 'far/a.csv'), 'utf8')).toBe('a');
      expect(readdirSync(place).toSorted()).toEqual(['far', 'latest']);
    },
  );

  test('never writes a file twice', async () => {
    const fresh = await freshFolder(join(folder, 'four'));
    await fresh.write({ path: 'a.csv', content: 'a' });
    await expect(fresh.write({ path: 'a.csv', content: 'b' })).rejects.toThrow(/EEXIST/);
    await fresh.discard();
  });
});
