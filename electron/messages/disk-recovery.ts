import { mkdir, readFile, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { hashOf } from '../files/read-document.ts';
import { saveFile } from '../files/save-file.ts';
import type { Grants } from './grants.ts';
import type { Recovery, Snapshot } from './ports.ts';

const FILE = z.strictObject({
  format: z.literal('overhang-recovery'),
  version: z.literal(1),
  name: z.string(),
  path: z.string().nullable(),
  /** SHA-256 of the file at `path` when it was last read or written. */
  saved: z.string().nullable(),
  text: z.string(),
});

interface RecoveryParts {
  readonly folder: string;
  readonly grants: Grants;
  readonly hashes: ReadonlyMap<string, string>;
}

/**
 * Unsaved work in a folder of its own. What an earlier run left is set aside at first use, so that it lasts
 * until it was asked for and then replaced, saved or given up. Calls are done one after the other.
 */
export function diskRecovery({ folder, grants, hashes }: RecoveryParts): Recovery {
  const current = join(folder, 'unsaved.json');
  const left = join(folder, 'left-behind.json');
  let asked = false;
  let last: Promise<unknown> = setAside(folder, current, left);
  const inTurn = <T>(task: () => Promise<T>): Promise<T> => {
    const turn = last.then(task);
    last = turn.catch(() => undefined);
    return turn;
  };
  const forgetLeft = async (): Promise<void> => {
    if (asked) await rm(left, { force: true });
  };
  const keep = async ({ name, handle, text }: Snapshot): Promise<void> => {
    const path = handle === null ? null : (grants.pathOf(handle) ?? null);
    const saved = path === null ? null : (hashes.get(path) ?? null);
    const file = { format: 'overhang-recovery', version: 1, name, path, saved, text };
    await saveFile(current, Buffer.from(JSON.stringify(file)), 0o600);
    await forgetLeft();
  };
  return {
    keep: (snapshot) => inTurn(() => keep(snapshot)),
    kept: () =>
      inTurn(async () => {
        asked = true;
        // A page that was loaded again left its work in this run.
        await rename(current, left).catch(() => undefined);
        return readSnapshot(left, grants);
      }),
    forget: () => inTurn(() => rm(current, { force: true })),
    settle: () =>
      inTurn(async () => {
        await rm(current, { force: true });
        await forgetLeft();
      }),
  };
}

async function setAside(folder: string, current: string, left: string): Promise<void> {
  await mkdir(folder, { recursive: true, mode: 0o700 }).catch(() => undefined);
  await rename(current, left).catch(() => undefined);
}

/** The file's handle is withheld if the file has become another since: saving must ask then. */
async function readSnapshot(file: string, grants: Grants): Promise<Snapshot | null> {
  const text = await readFile(file, 'utf8').catch(() => null);
  const read = text === null ? null : FILE.safeParse(parse(text));
  if (read === null || !read.success) return null;
  const { name, path, saved, text: content } = read.data;
  const now = path === null ? null : await readFile(path).then(hashOf, () => null);
  const same = path !== null && saved !== null && now === saved;
  return { name, handle: same ? grants.grant(path) : null, text: content };
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
