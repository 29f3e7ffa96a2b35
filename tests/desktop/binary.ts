import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const PACKAGE = resolve(import.meta.dirname, '../../node_modules/electron');

/** The path of Electron's binary, or null where it was not installed; never fetches it. */
export function electronBinary(): string | null {
  try {
    const path = join(PACKAGE, 'dist', readFileSync(join(PACKAGE, 'path.txt'), 'utf8').trim());
    return existsSync(path) ? path : null;
  } catch {
    return null;
  }
}
