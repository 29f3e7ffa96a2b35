import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** Where the built page is. */
export const PAGE = join(import.meta.dirname, '../../dist/renderer');

/** kB (1,000 bytes) of a file of the page, compressed. */
export const kilobytes = (file: string): number => gzipSync(readFileSync(join(PAGE, file))).length / 1000;

/** Scripts that the page names itself: without them there is no first screen. */
export const firstScripts = (): readonly string[] => [
  ...new Set(
    [
      ...readFileSync(join(PAGE, 'index.html'), 'utf8').matchAll(/(?:src|href)="\/(assets\/[^"]+\.js)"/g),
    ].flatMap(([, name]) => name ?? []),
  ),
];
