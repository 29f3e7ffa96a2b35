import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { freshFolder } from '../../../electron/files/fresh-folder.ts';
import { temporaryFolder } from '../../cli/temporary.ts';

const folder = temporaryFolder();

describe('freshFolder', () => {
  test('shows nothing in its place before it is finished', async () => {
    const target = join(folder, 'one', 'deep');
    const fresh = await freshFolder(target);
    await fresh.write({ path: 'dxf/a.dxf', text: 'a' });
    expect(existsSync(target)).toBe(false);
    await fresh.finish();
    expect(readFileSync(join(target, 'dxf/a.dxf'), 'utf8')).toBe('a');
    expect(readdirSync(join(folder, 'one'))).toEqual(['deep']);
  });

  test('leaves no trace when it is discarded, and the old folder as it was', async () => {
    const target = join(folder, 'two');
    mkdirSync(target);
    writeFileSync(join(target, 'manifest.json'), '{ "format": "overhang-manifest" }');
    const fresh = await freshFolder(target);
    await fresh.write({ path: 'b.svg', text: 'b' });
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

  test('never writes a file twice', async () => {
    const fresh = await freshFolder(join(folder, 'four'));
    await fresh.write({ path: 'a.csv', text: 'a' });
    await expect(fresh.write({ path: 'a.csv', text: 'b' })).rejects.toThrow(/EEXIST/);
    await fresh.discard();
  });
});
