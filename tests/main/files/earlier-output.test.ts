import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { earlierZip } from '../../../electron/files/earlier-output.ts';
import { temporaryFolder } from '../../cli/temporary.ts';

const folder = temporaryFolder();
const MANIFEST = '{"format":"overhang-manifest","files":[{"path":"a.dxf","size":1}]}';

const zipOf = (manifest: Uint8Array): Uint8Array =>
  zipSync({ 'jigs/manifest.json': manifest, 'jigs/a.dxf': new Uint8Array(1) });

const read = (bytes: Uint8Array) => {
  const file = join(folder, 'a.zip');
  writeFileSync(file, bytes);
  return earlierZip(file);
};

test('earlierZip reads the manifest of a zip of ours', async () => {
  expect(await read(zipOf(Buffer.from(MANIFEST)))).toEqual({
    madeFrom: null,
    whole: true,
    files: 2,
    others: [],
  });
});

test('earlierZip names the files that somebody put into it', async () => {
  const zip = zipSync({
    'jigs/manifest.json': Buffer.from(MANIFEST),
    'jigs/a.dxf': new Uint8Array(1),
    'jigs/dxf/': new Uint8Array(0),
    'jigs/dxf/b.nc': new Uint8Array(1),
  });
  expect(await read(zip)).toMatchObject({ whole: true, others: ['dxf/b.nc'] });
});

test('earlierZip unpacks no manifest that comes to more than any has, however small the zip', async () => {
  const bomb = zipOf(Buffer.from(MANIFEST + ' '.repeat(64 * 1024 * 1024)));
  expect(bomb.length).toBeLessThan(200_000);
  expect(await read(bomb)).toBeNull();
});

test('earlierZip takes a size that only stands there for no reason to make room', async () => {
  const zip = zipOf(Buffer.from(MANIFEST));
  const view = new DataView(zip.buffer, zip.byteOffset);
  // The central directory's record of a file begins with this mark; its size unpacked stands 24 bytes on
  // (PKWARE APPNOTE, 4.3.12, from memory).
  const record = Array.from(zip.keys()).find(
    (at) => at + 4 <= zip.length && view.getUint32(at, true) === 0x02014b50,
  );
  view.setUint32((record ?? 0) + 24, 0xfffffff0, true);
  const before = process.memoryUsage().arrayBuffers;
  expect(await read(zip)).toBeNull();
  expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(64 * 1024 * 1024);
});

test('earlierZip gives null for a folder, a file cut short and no zip at all', async () => {
  const zip = zipOf(Buffer.from(MANIFEST));
  for (const bytes of [zip.subarray(0, zip.length - 10), Buffer.from('text'), new Uint8Array(0)]) {
    expect(await read(bytes)).toBeNull();
  }
  expect(await earlierZip(folder)).toBeNull();
});
