import { link, realpath, rename, rm } from 'node:fs/promises';
import { basename, dirname, extname, join, resolve } from 'node:path';
import { temporaryName } from './temporary-name.ts';

/** The name of the version before the last save, beside the file: `Kitchen.previous.overhang`. */
export function previousPath(path: string): string {
  const extension = extname(path);
  return join(dirname(path), `${basename(path, extension)}.previous${extension}`);
}

/**
 * Saves, and keeps the version that was replaced beside the file, in the place of the one kept before; where the save
 * fails, that one stays. The version gets a second name for the same bytes, which takes no room until the new one is
 * there, and is whole at any moment. Where the disk knows no second names (such as memory sticks), or nothing may be
 * written, the save goes on without it. Throws what `save` throws.
 */
export async function keepPrevious(path: string, save: () => Promise<void>): Promise<void> {
  const target = await realpath(resolve(path)).catch(() => null);
  if (target === null) return save();
  const aside = join(dirname(target), temporaryName(basename(target), 'new'));
  const isKept = await link(target, aside).then(
    () => true,
    () => false,
  );
  try {
    await save();
    if (isKept) await rename(aside, previousPath(target)).catch(() => undefined);
  } finally {
    // Of two names of the same file a rename leaves both.
    if (isKept) await rm(aside, { force: true }).catch(() => undefined);
  }
}
