import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** A small built page in a folder, beside a file that must never be served. */
export function makePage(folder: string): string {
  const page = join(folder, 'renderer');
  mkdirSync(join(page, 'assets'), { recursive: true });
  writeFileSync(join(page, 'index.html'), '<!doctype html><title>Page</title>');
  // The first has no whole hash in its name, the second has.
  writeFileSync(join(page, 'assets/main-Ab3_x.js'), 'export {};');
  writeFileSync(join(page, 'assets/main-Ab3_xyz9.js'), 'export {};');
  writeFileSync(join(page, 'assets/main.css'), ':root {}');
  writeFileSync(join(page, 'assets/notes.txt'), 'of a kind that is not served');
  writeFileSync(join(page, '.hidden.js'), 'hidden');
  writeFileSync(join(folder, 'secret.js'), 'secret');
  return page;
}
