import { mkdir, stat } from 'node:fs/promises';
import { basename, dirname, extname, resolve } from 'node:path';
import { bytesOf } from './bytes-of.ts';
import { bringBack } from './bring-back.ts';
import { earlierZip } from './earlier-output.ts';
import type { FreshOutput } from './fresh-output.ts';
import { refuseOthers } from './refuse-others.ts';
import { hashOf } from './read-document.ts';
import { Refusal } from './refusal.ts';
import { saveFile } from './save-file.ts';
import { zipFolder } from './zip-folder.ts';

/**
 * Begins a zip whose files lie in a folder of its own name; refuses to take the place of anything that this
 * program did not write. It is in memory until it is finished.
 */
export async function freshZip(path: string): Promise<FreshOutput> {
  const target = resolve(path);
  await mkdir(dirname(target), { recursive: true });
  await bringBack(target);
  await mayReplace(target);
  const folder = basename(target, extname(target));
  const files = new Map<string, Uint8Array>();
  return {
    async write({ path: within, content, report }) {
      if (files.has(within)) throw new Error(`EEXIST: ${within} is in the zip already`);
      const bytes = bytesOf(content);
      files.set(within, bytes);
      return {
        path: within,
        size: bytes.length,
        sha256: hashOf(bytes),
        ...(report === undefined ? {} : { report }),
      };
    },
    async finish() {
      await mayReplace(target);
      await saveFile(target, zipFolder(folder, files));
      files.clear();
    },
    async discard() {
      files.clear();
    },
  };
}

async function mayReplace(target: string): Promise<void> {
  const found = await stat(target).catch(() => null);
  if (found === null) return;
  if (!found.isFile()) throw new Refusal(`${target} is a folder; name a zip file`);
  const earlier = await earlierZip(target);
  if (earlier === null) {
    throw new Refusal(`${target} is a file that this program did not write; name a new one`);
  }
  refuseOthers(target, earlier);
}
