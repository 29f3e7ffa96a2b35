import { link, realpath, rename, rm } from 'node:fs/promises';
import { basename, dirname, extname, join, resolve } from 'node:path';
import { temporaryName } from './temporary-name.ts';

/** The name of the version before the last save, beside the file: `Kitchen.previous.overhang`. */
export function previousPath(path: string): string {
  const extension = extname(path);
  return join(dirname(path), `${basename(path, extension)}.previous${extension}`);
}

/**
 * Keeps the version that is about to be replaced beside the file, in the place of the one kept before: a second
 * name for the same bytes, which takes no room until the new version is there, and is whole at any moment. Where
 * the disk knows no second names (such as memory sticks), or nothing may be written, the save goes on without it.
 */
export async function keepPrevious(path: string): Promise<void> {
  const target = await realpath(resolve(path)).catch(() => null);
  if (target === null) return;
  const previous = previousPath(target);
  const fresh = join(dirname(target), temporaryName(basename(target), 'new'));
  await link(target, fresh)
    .then(() => rename(fresh, previous))
    .catch(() => undefined);
  // Of two names of the same file, as after a save that failed, a rename leaves both.
  await rm(fresh, { force: true }).catch(() => undefined);
}
