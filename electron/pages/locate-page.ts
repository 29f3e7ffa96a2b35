import { join } from 'node:path';
import { contentType } from './content-type.ts';

/** A name of a built file: no dot in front, nothing that a system could read as a step, a drive or a stream. */
const NAME = /^[A-Za-z0-9_-][A-Za-z0-9._-]*$/;

/**
 * The file that a path of an address stands for, or null for anything that is no served file below `root`.
 * `/` is the page itself.
 *
 * @example locatePage('/dist', '/assets/main.js') // '/dist/assets/main.js'
 */
export function locatePage(root: string, pathname: string): string | null {
  if (pathname === '/') return join(root, 'index.html');
  // Built names need no escapes, so an escaped path is no path of ours.
  const names = pathname.split('/').slice(1);
  if (!pathname.startsWith('/') || !names.every((name) => NAME.test(name) && !name.includes('..')))
    return null;
  return contentType(pathname) === undefined ? null : join(root, ...names);
}
