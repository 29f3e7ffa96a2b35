import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { diskOutput } from '../../electron/messages/disk-output.ts';
import { createRouter } from '../../electron/messages/router.ts';
import { temporaryFolder } from '../cli/temporary.ts';
import { memoryPorts } from './memory-ports.ts';

const root = temporaryFolder();
let next = 0;

/** A router that writes to a folder of the disk. */
function outputTo() {
  const parent = join(root, String((next += 1)));
  mkdirSync(parent);
  const shown: string[] = [];
  const no = async () => null;
  const dialogs = { openDocument: no, saveDocument: no, outputFolder: async () => parent };
  const { ports } = memoryPorts();
  const output = diskOutput(dialogs, (path) => void shown.push(path));
  const router = createRouter({ ...ports, output });
  return {
    parent,
    shown,
    router,
    begin: async (suggestedName: string): Promise<string> => {
      const begun = await router.answer('output.begin', { suggestedName });
      if (typeof begun === 'object' && begun !== null && 'job' in begun) return String(begun.job);
      throw new Error(JSON.stringify(begun));
    },
  };
}

const MANIFEST = '{\n  "format": "overhang-manifest"\n}\n';

describe('diskOutput', () => {
  test('shows nothing until it is finished, then everything, and shows it in the file manager', async () => {
    const { parent, shown, router, begin } = outputTo();
    const job = await begin('Harbor Library');
    await router.answer('output.write', { job, path: 'dxf/a_mm.dxf', content: '½' });
    await router.answer('output.write', { job, path: 'manifest.json', content: MANIFEST });
    expect(readdirSync(parent).filter((name) => !name.startsWith('.'))).toEqual([]);
    const place = join(parent, 'Harbor Library');
    expect(await router.answer('output.finish', { job })).toEqual({ ok: true, place });
    expect(readFileSync(join(place, 'dxf/a_mm.dxf'), 'utf8')).toBe('½');
    expect(readdirSync(parent)).toEqual(['Harbor Library']);
    await router.answer('output.show', { place });
    expect(shown).toEqual([join(place, 'manifest.json')]);
  });

  test('replaces a folder that the program wrote, and no other', async () => {
    const { parent, router, begin } = outputTo();
    mkdirSync(join(parent, 'ours'));
    const listed = { format: 'overhang-manifest', files: [{ path: 'old.dxf', size: 3 }] };
    writeFileSync(join(parent, 'ours/manifest.json'), JSON.stringify(listed));
    writeFileSync(join(parent, 'ours/old.dxf'), 'old');
    mkdirSync(join(parent, 'theirs'));
    writeFileSync(join(parent, 'theirs/photo.jpg'), 'old');
    const job = await begin('ours');
    await router.answer('output.write', { job, path: 'new.dxf', content: 'new' });
    await router.answer('output.finish', { job });
    expect(readdirSync(join(parent, 'ours'))).toEqual(['new.dxf']);
    expect(await router.answer('output.begin', { suggestedName: 'theirs' })).toEqual({
      ok: false,
      reason: `${join(parent, 'theirs')} holds other files, which would be lost; name a new or empty folder`,
    });
    expect(readdirSync(join(parent, 'theirs'))).toEqual(['photo.jpg']);
  });

  test('a name that leads elsewhere stays in the folder that was chosen', async () => {
    const { parent, router, begin } = outputTo();
    const job = await begin('../../escaped');
    await router.answer('output.finish', { job });
    expect(readdirSync(parent)).toEqual(['escaped']);
  });

  test('discard and close leave no trace', async () => {
    const { parent, router, begin } = outputTo();
    const job = await begin('one');
    await router.answer('output.write', { job, path: 'a.dxf', content: 'a' });
    await router.answer('output.discard', { job });
    await begin('two');
    await router.close();
    expect(readdirSync(parent)).toEqual([]);
    expect(existsSync(join(parent, 'one'))).toBe(false);
  });

  test('the same path twice is refused, and the first stays', async () => {
    const { parent, router, begin } = outputTo();
    const job = await begin('twice');
    await router.answer('output.write', { job, path: 'a.dxf', content: 'first' });
    const again = await router.answer('output.write', { job, path: 'a.dxf', content: 'second' });
    expect(again).toMatchObject({ ok: false });
    await router.answer('output.finish', { job });
    expect(readFileSync(join(parent, 'twice/a.dxf'), 'utf8')).toBe('first');
  });
});
