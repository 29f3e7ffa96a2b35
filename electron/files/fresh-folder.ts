import { randomUUID } from 'node:crypto';
import { mkdir, open, readdir, readFile, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { MANIFEST_FORMAT, type ListedFile } from '../../core/files/manifest.ts';
import type { BundleFile } from '../../core/bundle.ts';
import { hashOf } from './read-document.ts';
import { Refusal } from './refusal.ts';
import { retry } from './retry.ts';
import { syncFolder } from './sync-folder.ts';

/** A folder that comes into being whole or not at all. */
export interface FreshFolder {
  readonly write: (file: BundleFile) => Promise<ListedFile>;
  /** Moves the folder into its place; an older one of ours makes way first. */
  readonly finish: () => Promise<void>;
  /** Leaves no trace. */
  readonly discard: () => Promise<void>;
}

/** Begins a folder beside its place; refuses to take the place of anything that this program did not write. */
export async function freshFolder(path: string): Promise<FreshFolder> {
  const target = resolve(path);
  await mayReplace(target);
  await mkdir(dirname(target), { recursive: true });
  // Not mkdtemp, whose folder nobody but its owner can enter.
  const building = join(dirname(target), `.${basename(target)}-${randomUUID()}`);
  await mkdir(building);
  return {
    async write({ path: within, text, report }) {
      const file = join(building, within);
      await mkdir(dirname(file), { recursive: true });
      const bytes = Buffer.from(text, 'utf8');
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
      const aside = `${building}-old`;
      const old = await exists(target);
      if (old) await retry(() => rename(target, aside));
      try {
        await retry(() => rename(building, target));
      } catch (problem) {
        if (old) await retry(() => rename(aside, target));
        throw problem;
      }
      await syncFolder(dirname(target));
      await rm(aside, { recursive: true, force: true });
    },
    discard: () => rm(building, { recursive: true, force: true }),
  };
}

const exists = (path: string): Promise<boolean> =>
  stat(path).then(
    () => true,
    () => false,
  );

async function mayReplace(target: string): Promise<void> {
  if (!(await exists(target))) return;
  const names = await readdir(target).catch(() => null);
  if (names === null) throw new Refusal(`${target} is a file; name a folder`);
  if (names.length === 0) return;
  const manifest = await readFile(join(target, 'manifest.json'), 'utf8').catch(() => '');
  if (!manifest.includes(`"format": "${MANIFEST_FORMAT}"`)) {
    throw new Refusal(`${target} holds other files, which would be lost; name a new or empty folder`);
  }
}
