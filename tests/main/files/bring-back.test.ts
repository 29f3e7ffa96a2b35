import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { bringBack } from '../../../electron/files/bring-back.ts';
import { temporaryName, type TemporaryKind } from '../../../electron/files/temporary-name.ts';
import { temporaryFolder } from '../../cli/temporary.ts';

const folder = temporaryFolder();
const OTHER_RUN = '00000000-0000-4000-8000-000000000000';
const RUN = /[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}/;

/** A process number that nobody has any more. */
const ended = spawnSync(process.execPath, ['--eval', '']).pid;

/** The name that another run's process gives to `kitchen`. */
const nameOf = (kind: TemporaryKind, pid = ended, target = 'kitchen') =>
  temporaryName(target, kind).replace(`-${process.pid}-`, `-${pid}-`).replace(RUN, OTHER_RUN);

function place(name: string): string {
  mkdirSync(join(folder, name));
  return join(folder, name);
}

/** A folder of ours, whole or without its file. */
function output(path: string, whole = true): void {
  mkdirSync(path);
  const sha256 = createHash('sha256').update('a').digest('hex');
  const files = [{ path: 'a.svg', size: 1, sha256 }];
  writeFileSync(join(path, 'manifest.json'), JSON.stringify({ format: 'overhang-manifest', files }));
  if (whole) writeFileSync(join(path, 'a.svg'), 'a');
}

describe('bringBack', () => {
  test('removes what an ended process was writing, and nothing of others', async () => {
    const at = place('one');
    const kept = [
      // Of this run, of a process that lives, of another target, and no name of ours.
      temporaryName('kitchen', 'new'),
      nameOf('new', process.ppid),
      nameOf('new', ended, 'bath'),
      '.overhang-notes',
    ];
    for (const name of [...kept, nameOf('new')]) mkdirSync(join(at, name));
    await bringBack(join(at, 'kitchen'));
    expect(readdirSync(at).toSorted()).toEqual(kept.toSorted());
  });

  test('removes what is older than a day whoever wrote it', async () => {
    const at = place('two');
    const name = nameOf('new', process.ppid);
    mkdirSync(join(at, name));
    const before = Date.now() / 1000 - 25 * 60 * 60;
    utimesSync(join(at, name), before, before);
    await bringBack(join(at, 'kitchen'));
    expect(readdirSync(at)).toEqual([]);
  });

  test('puts the old folder back where the new one never came into place', async () => {
    const at = place('three');
    output(join(at, nameOf('old')));
    output(join(at, nameOf('new')));
    await bringBack(join(at, 'kitchen'));
    expect(readdirSync(at)).toEqual(['kitchen']);
    expect(readFileSync(join(at, 'kitchen', 'a.svg'), 'utf8')).toBe('a');
  });

  test('removes an old folder that was being removed, and one whose successor is there', async () => {
    const at = place('four');
    output(join(at, nameOf('old')), false);
    await bringBack(join(at, 'kitchen'));
    expect(existsSync(join(at, 'kitchen'))).toBe(false);
    output(join(at, 'kitchen'));
    output(join(at, nameOf('old')));
    await bringBack(join(at, 'kitchen'));
    expect(readdirSync(at)).toEqual(['kitchen']);
  });
});

test('temporaryName is as short for the longest name that a system takes, and never the same twice', () => {
  const name = temporaryName('ü'.repeat(127), 'new');
  expect(Buffer.byteLength(name)).toBeLessThan(120);
  expect(temporaryName('ü'.repeat(127), 'new')).not.toBe(name);
});
