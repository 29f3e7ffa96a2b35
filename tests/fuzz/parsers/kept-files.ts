import * as fc from 'fast-check';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { earlierFolder, earlierZip } from '../../../electron/files/earlier-output.ts';
import { diskRecovery } from '../../../electron/messages/disk-recovery.ts';
import { createGrants } from '../../../electron/messages/grants.ts';
import { recentPaths } from '../../../electron/messages/recent.ts';
import { TAB, tabOf } from '../../messages/tabs.ts';
import { anyText, mangledJson, mangledText } from '../arbitraries.ts';
import { fuzzed, type Breaches, type Fuzzed } from '../fuzzed.ts';

const MANIFEST = {
  format: 'overhang-manifest',
  made_from: 'x',
  files: [
    { path: 'a.dxf', size: 1 },
    { path: '../../etc/passwd', size: 1 },
  ],
};
const RECENT = { format: 'overhang-recent', version: 1, paths: ['/home/a.overhang'] };
const SNAPSHOT = { format: 'overhang-recovery', version: 1, name: 'a', path: null, saved: null, text: '{}' };

const textsOf = (json: unknown): fc.Arbitrary<string> =>
  fc.oneof(
    mangledJson([json]).map((mangled) => JSON.stringify(mangled)),
    mangledText([JSON.stringify(json)]),
    anyText,
  );

/** A reader of a file of the program's own, which comes from a folder that anybody may write to. */
const keptFile = (
  name: string,
  inputs: fc.Arbitrary<string | Uint8Array>,
  file: string,
  check: (folder: string) => Promise<Breaches>,
): Fuzzed =>
  fuzzed<string | Uint8Array>(name, {
    inputs,
    ofText: (text) => text,
    weight: 0.3,
    async check(content) {
      const folder = mkdtempSync(join(tmpdir(), 'overhang-fuzz-'));
      try {
        writeFileSync(join(folder, file), content);
        return await check(folder);
      } finally {
        rmSync(folder, { recursive: true, force: true });
      }
    },
  });

export const KEPT_FILE_PARSERS: readonly Fuzzed[] = [
  keptFile('list of recent documents', textsOf(RECENT), 'recent.json', async (folder) => {
    const paths = await recentPaths(join(folder, 'recent.json')).list();
    return paths.length <= 10 && paths.every((path) => typeof path === 'string') ? [] : ['no paths'];
  }),
  keptFile('unsaved work', textsOf(SNAPSHOT), `unsaved-${tabOf(2).id}.json`, async (folder) => {
    const kept = await diskRecovery({ folder, grants: createGrants(), hashes: new Map() }).kept(TAB, []);
    return kept === null || typeof kept.text === 'string' ? [] : ['no text'];
  }),
  keptFile('manifest of an earlier folder', textsOf(MANIFEST), 'manifest.json', async (folder) => {
    const found = await earlierFolder(folder);
    return found === null || found.files >= 1 ? [] : ['no files'];
  }),
  keptFile(
    'earlier zip',
    fc.oneof(
      textsOf(MANIFEST).map((text) =>
        zipSync({ 'a/manifest.json': Buffer.from(text), '../b': new Uint8Array(1) }),
      ),
      fc
        .tuple(fc.uint8Array({ minLength: 1, maxLength: 12 }), fc.double({ min: 0, max: 1, noNaN: true }))
        .map(([put, at]) => {
          const zip = zipSync({ 'a/manifest.json': Buffer.from(JSON.stringify(MANIFEST)) });
          zip.set(put, Math.floor(at * (zip.length - put.length)));
          return zip;
        }),
      fc.uint8Array({ maxLength: 200 }),
    ),
    'a.zip',
    async (folder) => {
      const found = await earlierZip(join(folder, 'a.zip'));
      return found === null || found.files >= 1 ? [] : ['no files'];
    },
  ),
];
