import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import { run } from '../../electron/cli/run.ts';

/** A folder that is gone after the tests of a file. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'overhang-test-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A call of the command line, with what it said. */
export async function call(...words: readonly string[]) {
  let [out, err] = ['', ''];
  const code = await run(words, {
    out: (text) => (out += text),
    err: (text) => (err += text),
  });
  return { code, out, err };
}

/** A small order that is right. */
export const ORDER = [
  'cabinet,drawer,qty,style,opening_w,opening_h',
  'B1,top,2,full overlay,18,5 1/2',
  'B1,bottom,2,full overlay,18,10 1/4',
  '',
].join('\n');
