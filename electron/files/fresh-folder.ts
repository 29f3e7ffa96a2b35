import { mkdir, open, readdir, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { bytesOf } from './bytes-of.ts';
import { bringBack } from './bring-back.ts';
import { earlierFolder } from './earlier-output.ts';
import { exists } from './exists.ts';
import type { FreshOutput } from './fresh-output.ts';
import { refuseOthers } from './refuse-others.ts';
import { hashOf } from './read-document.ts';
import { Refusal } from './refusal.ts';
import { resolveLinks } from './resolve-links.ts';
import { retry } from './retry.ts';
import { syncFolder } from './sync-folder.ts';
import { temporaryName } from './temporary-name.ts';

/**
 * Begins a folder beside its place, which may be a link's; refuses to take the place of anything that this program
 * did not write.
 */
export async function freshFolder(path: string): Promise<FreshOutput> {
  const target = await resolveLinks(path);
  await bringBack(target);
  await mayReplace(target);
  await mkdir(dirname(target), { recursive: true });
  // Not mkdtemp, whose folder nobody but its owner can enter.
  const building = join(dirname(target), temporaryName(basename(target), 'new'));
  await mkdir(building);
  const folders = new Map<string, Promise<unknown>>();
  const folderOf = async (file: string): Promise<void> => {
    const folder = dirname(file);
    const made = folders.get(folder) ?? mkdir(folder, { recursive: true });
    folders.set(folder, made);
    await made;
  };
  return {
    async write({ path: within, content, report }) {
      const file = join(building, within);
      await folderOf(file);
      const bytes = bytesOf(content);
      const handle = await open(file, 'wx');
      try {
        await handle.writeFile(bytes);
        await handle.sync();
      } finally {
        await handle.close();
      }
      return {
        path: within,
        size: bytes.length,
        sha256: hashOf(bytes),
        ...(report === undefined ? {} : { report }),
      };
    },
    async finish() {
      await mayReplace(target);
      const aside = join(dirname(target), temporaryName(basename(target), 'old'));
      const old = await exists(target);
      if (old) await retry(() => rename(target, aside));
      try {
        await retry(() => rename(building, target));
      } catch (problem) {
        if (old) await retry(() => rename(aside, target));
        throw problem;
      }
      await syncFolder(dirname(target));
      // The new one is in its place, whatever becomes of the old one; the next run clears it up.
      await rm(aside, { recursive: true, force: true }).catch(() => undefined);
    },
    discard: () => rm(building, { recursive: true, force: true }),
  };
}

async function mayReplace(target: string): Promise<void> {
  if (!(await exists(target))) return;
  const names = await readdir(target).catch(() => null);
  if (names === null) throw new Refusal(`${target} is a file; name a folder`);
  if (names.length === 0) return;
  const earlier = await earlierFolder(target);
  if (earlier === null) {
    throw new Refusal(`${target} holds other files, which would be lost; name a new or empty folder`);
  }
  refuseOthers(target, earlier);
}
