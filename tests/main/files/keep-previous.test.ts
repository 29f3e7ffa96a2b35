import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { keepPrevious, previousPath } from '../../../electron/files/keep-previous.ts';
import { saveFile } from '../../../electron/files/save-file.ts';
import { temporaryFolder } from '../../cli/temporary.ts';

const root = temporaryFolder();

const placeFor = (name: string): string => {
  const place = join(root, name);
  mkdirSync(place);
  return place;
};

describe('previousPath', () => {
  test.each([
    ['/a/Kitchen.overhang', '/a/Kitchen.previous.overhang'],
    ['/a/b.c/Kitchen 2.1.json', '/a/b.c/Kitchen 2.1.previous.json'],
    ['/a/none', '/a/none.previous'],
  ])('previousPath(%j) is %j, which opens as the file does', (path, previous) => {
    expect(previousPath(path)).toBe(previous);
  });
});

describe('keepPrevious', () => {
  test('of a file that is not there does nothing', async () => {
    const place = placeFor('gone');
    await keepPrevious(join(place, 'a.overhang'));
    expect(readdirSync(place)).toEqual([]);
  });

  test('before a save that fails, again and again, leaves the file, its copy and nothing hidden', async () => {
    const place = placeFor('fails');
    const file = join(place, 'a.overhang');
    writeFileSync(file, 'one');
    const write = async (): Promise<never> => {
      throw Object.assign(new Error('ENOSPC'), { code: 'ENOSPC' });
    };
    for (let tries = 0; tries < 3; tries += 1) {
      await keepPrevious(file);
      await expect(saveFile(file, Buffer.from('two'), undefined, { write })).rejects.toThrow('ENOSPC');
    }
    expect(readdirSync(place).toSorted()).toEqual(['a.overhang', 'a.previous.overhang']);
    await keepPrevious(file);
    await saveFile(file, Buffer.from('three'));
    expect(readFileSync(file, 'utf8')).toBe('three');
    expect(readFileSync(previousPath(file), 'utf8')).toBe('one');
  });

  test.skipIf(process.platform === 'win32')('stands beside the file behind a link', async () => {
    const place = placeFor('links');
    mkdirSync(join(place, 'far'));
    writeFileSync(join(place, 'far/real.overhang'), 'one');
    symlinkSync('far/real.overhang', join(place, 'link.overhang'));
    await keepPrevious(join(place, 'link.overhang'));
    expect(readdirSync(join(place, 'far')).toSorted()).toEqual(['real.overhang', 'real.previous.overhang']);
    expect(readdirSync(place).toSorted()).toEqual(['far', 'link.overhang']);
  });
});
