import { open, rename, rm, stat, type FileHandle } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { clearLeftOvers } from './clear-left-overs.ts';
import { resolveLinks } from './resolve-links.ts';
import { retry } from './retry.ts';
import { syncFolder } from './sync-folder.ts';
import { temporaryName } from './temporary-name.ts';

/** Of a new file whose maker said nothing: read and written by its owner, read by others. */
const USUAL_MODE = 0o644;

/** Calls that a test replaces by failing ones. */
export interface SaveSteps {
  readonly rename: (from: string, to: string) => Promise<void>;
  readonly write: (handle: FileHandle, bytes: Uint8Array) => Promise<void>;
}

const STEPS: SaveSteps = { rename, write: (handle, bytes) => handle.writeFile(bytes) };

/**
 * Saves a file whole or not at all: a temporary file beside it, flushed, then renamed over it. The file that
 * a symbolic link points to is replaced, not the link, and it keeps its mode.
 */
export async function saveFile(
  path: string,
  bytes: Uint8Array,
  mode?: number,
  given: Partial<SaveSteps> = {},
): Promise<void> {
  const steps = { ...STEPS, ...given };
  const target = await resolveLinks(path);
  const folder = dirname(target);
  const temporary = join(folder, temporaryName(basename(target), 'new'));
  const kept = await modeOf(target);
  const handle = await open(temporary, 'wx', mode ?? kept ?? USUAL_MODE);
  try {
    await fill(handle, mode ?? kept, () => steps.write(handle, bytes));
    await retry(() => steps.rename(temporary, target));
  } catch (problem) {
    await rm(temporary, { force: true });
    throw problem;
  }
  await syncFolder(folder);
  // The file is saved, whatever becomes of these.
  await clearLeftOvers(target).catch(() => undefined);
}

async function fill(handle: FileHandle, mode: number | undefined, write: () => Promise<void>): Promise<void> {
  try {
    // The mode that a file is opened with is narrowed by the umask.
    if (mode !== undefined) await handle.chmod(mode);
    await write();
    await handle.sync();
  } finally {
    await handle.close();
  }
}

const modeOf = (path: string): Promise<number | undefined> =>
  stat(path).then(
    ({ mode }) => mode & 0o777,
    () => undefined,
  );
