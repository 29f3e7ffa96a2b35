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

const saving = (file: string, text: string) => keepPrevious(file, () => saveFile(file, Buffer.from(text)));

describe('keepPrevious', () => {
  test('of a file that is not there only saves', async () => {
    const place = placeFor('gone');
    await saving(join(place, 'a.overhang'), 'one');
    expect(readdirSync(place)).toEqual(['a.overhang']);
  });

  test('keeps the version that was replaced, and the one kept before where a save fails, again and again', async () => {
    const place = placeFor('fails');
    const file = join(place, 'a.overhang');
    await saving(file, 'one');
    await saving(file, 'two');
    const write = async (): Promise<never> => {
      throw Object.assign(new Error('ENOSPC'), { code: 'ENOSPC' });
    };
    for (let tries = 0; tries < 3; tries += 1) {
      const failing = keepPrevious(file, () => saveFile(file, Buffer.from('three'), undefined, { write }));
      await expect(failing).rejects.toThrow('ENOSPC');
      expect(readFileSync(file, 'utf8')).toBe('two');
      expect(readFileSync(previousPath(file), 'utf8')).toBe('one');
    }
    expect(readdirSync(place).toSorted()).toEqual(['a.overhang', 'a.previous.overhang']);
    await saving(file, 'three');
    expect(readFileSync(file, 'utf8')).toBe('three');
    expect(readFileSync(previousPath(file), 'utf8')).toBe('two');
  });

  test.skipIf(process.platform === 'win32')('stands beside the file behind a link', async () => {
    const place = placeFor('links');
    mkdirSync(join(place, 'far'));
    writeFileSync(join(place, 'far/real.overhang'), 'one');
    symlinkSync('far/real.overhang', join(place, 'link.overhang'));
    await saving(join(place, 'link.overhang'), 'two');
    expect(readFileSync(join(place, 'far/real.previous.overhang'), 'utf8')).toBe('one');
    expect(readdirSync(join(place, 'far')).toSorted()).toEqual(['real.overhang', 'real.previous.overhang']);
    expect(readdirSync(place).toSorted()).toEqual(['far', 'link.overhang']);
  });
});
