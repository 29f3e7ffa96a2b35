import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** Where the built page is. */
export const PAGE = join(import.meta.dirname, '../../dist/renderer');

/** kB (1,000 bytes) of a file of the page, compressed. */
export const kilobytes = (file: string): number => gzipSync(readFileSync(join(PAGE, file))).length / 1000;

/** Scripts that the page names: those without which there is no first screen, or those of the seat's picture. */
export const firstScripts = (of: 'screen' | 'picture' = 'screen'): readonly string[] => [
  ...new Set(
    [...readFileSync(join(PAGE, 'index.html'), 'utf8').matchAll(/<(?:script|link)\b[^>]*>/g)].flatMap(
      ([tag]) => {
        const [, name] = /(?:src|href)="\/(assets\/[^"]+\.js)"/.exec(tag) ?? [];
        return name === undefined || tag.includes('data-for="Seat"') !== (of === 'picture') ? [] : name;
      },
    ),
  ),
];
