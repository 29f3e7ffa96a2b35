import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { freshZip } from '../../../electron/files/fresh-zip.ts';
import { temporaryFolder } from '../../cli/temporary.ts';

const folder = temporaryFolder();
const OURS =
  '{ "format": "overhang-manifest", "files": [{ "path": "a", "size": 1 }, { "path": "b", "size": 1 }] }';

describe('freshZip', () => {
  test('makes a zip that Python’s zipfile finds sound, with its files in a folder of its name', async () => {
    const target = join(folder, 'deep', 'kitchen.zip');
    const fresh = await freshZip(target);
    await fresh.write({ path: 'svg/a.svg', content: 'a½' });
    await fresh.write({ path: 'manifest.json', content: OURS });
    expect(readdirSync(join(folder, 'deep'))).toEqual([]);
    await fresh.finish();
    expect(readdirSync(join(folder, 'deep'))).toEqual(['kitchen.zip']);
    const script =
      'import sys,zipfile\nz=zipfile.ZipFile(sys.argv[1])\nassert z.testzip() is None\nprint([(i.filename,i.date_time[:3]) for i in z.infolist()])\nprint(z.read("kitchen/svg/a.svg").decode())';
    const { stdout } = spawnSync('/usr/bin/python3', ['-c', script, target], { encoding: 'utf8' });
    expect(stdout).toBe(
      "[('kitchen/manifest.json', (1980, 1, 1)), ('kitchen/svg/a.svg', (1980, 1, 1))]\na½\n",
    );
  });

  test('gives the same bytes for the same files in whatever order they come, and replaces its own', async () => {
    const target = join(folder, 'same.zip');
    const made: Buffer[] = [];
    for (const names of [
      ['a', 'b'],
      ['b', 'a'],
    ]) {
      const fresh = await freshZip(target);
      for (const path of names) await fresh.write({ path, content: path });
      await fresh.write({ path: 'manifest.json', content: OURS });
      await fresh.finish();
      made.push(readFileSync(target));
    }
    expect(made[0]?.equals(made[1] ?? Buffer.of())).toBe(true);
  });

  test('refuses a file that is not ours, a torn zip, and a folder', async () => {
    const whole = readFileSync(join(folder, 'same.zip'));
    writeFileSync(join(folder, 'torn.zip'), whole.subarray(0, whole.length - 30));
    writeFileSync(join(folder, 'letter.zip'), 'keep me');
    mkdirSync(join(folder, 'folder.zip'));
    await expect(freshZip(join(folder, 'torn.zip'))).rejects.toThrow(/did not write; name a new one/);
    await expect(freshZip(join(folder, 'letter.zip'))).rejects.toThrow(/did not write; name a new one/);
    await expect(freshZip(join(folder, 'folder.zip'))).rejects.toThrow(/is a folder; name a zip file/);
    expect(readFileSync(join(folder, 'letter.zip'), 'utf8')).toBe('keep me');
  });

  test('never holds a file twice', async () => {
    const fresh = await freshZip(join(folder, 'twice.zip'));
    await fresh.write({ path: 'a', content: 'a' });
    await expect(fresh.write({ path: 'a', content: 'b' })).rejects.toThrow(/EEXIST/);
  });
});
