import { mkdir, readdir, readFile, rename, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import type { Tab } from '../../shared/contract/tab.ts';
import { jsonOf } from '../../shared/json-of.ts';
import { hashOf, readDocument } from '../files/read-document.ts';
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
 * Unsaved work in a folder of its own, in files that belong to one tab each: `unsaved-ID.json` is what it works
 * on, `left-ID.json` what was offered to it, which lasts until it is replaced, saved or given up. No tab ever
 * writes another's file; it takes one over only from a tab that is gone. Calls are done one after the other.
 */
export function diskRecovery({ folder, grants, hashes }: RecoveryParts): Recovery {
  const place = (kind: 'unsaved' | 'left', id: string): string => join(folder, `${kind}-${id}.json`);
  /** The tabs of this run, each with its browser. */
  const seen = new Map<string, string>();
  let last: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(tab: Tab, task: () => Promise<T>): Promise<T> => {
    seen.set(tab.id, tab.browser);
    const turn = last.then(task);
    last = turn.catch(() => undefined);
    return turn;
  };
  const settle = async (id: string): Promise<void> => {
    await rm(place('unsaved', id), { force: true });
    await rm(place('left', id), { force: true });
  };
  const keep = async (id: string, { name, handle, text }: Snapshot): Promise<void> => {
    const path = handle === null ? null : (grants.pathOf(handle) ?? null);
    const saved = path === null ? null : (hashes.get(path) ?? null);
    const file = { format: 'overhang-recovery', version: 1, name, path, saved, text };
    await mkdir(folder, { recursive: true, mode: 0o700 });
    await saveFile(place('unsaved', id), Buffer.from(JSON.stringify(file)), 0o600);
    await rm(place('left', id), { force: true });
  };
  /** Of another browser nobody can tell here whether its tabs of this run are still open. */
  const isGone = (id: string, { browser }: Tab, open: readonly string[]): boolean =>
    !open.includes(id) && (seen.get(id) ?? browser) === browser;
  const kept = async (tab: Tab, open: readonly string[]): Promise<Snapshot | null> => {
    const left = place('left', tab.id);
    // A tab that was loaded again left its own work.
    await rename(place('unsaved', tab.id), left).catch(() => undefined);
    const own = await readSnapshot(left, grants);
    if (own !== null) return own;
    for (const { file, id } of await newestFirst(folder)) {
      if (id === tab.id || !isGone(id, tab, open)) continue;
      const found = await readSnapshot(file, grants);
      if (found === null) continue;
      await rename(file, left);
      return found;
    }
    return null;
  };
  return {
    keep: (tab, snapshot) => inTurn(tab, () => keep(tab.id, snapshot)),
    kept: (tab, open) => inTurn(tab, () => kept(tab, open)),
    forget: (tab) => inTurn(tab, () => rm(place('unsaved', tab.id), { force: true })),
    settle: (tab) => inTurn(tab, () => settle(tab.id)),
    async settleAll() {
      await last;
      await Promise.all([...seen.keys()].map(settle));
    },
  };
}

/** The snapshots of the folder and the tabs that they belong to. */
async function newestFirst(
  folder: string,
): Promise<readonly { readonly file: string; readonly id: string }[]> {
  const names = await readdir(folder).catch(() => []);
  const found = await Promise.all(
    names.map(async (name) => {
      const id = /^(?:unsaved|left)-([0-9a-f-]{36})\.json$/.exec(name)?.[1];
      const file = join(folder, name);
      const time =
        id === undefined
          ? null
          : await stat(file).then(
              ({ mtimeMs }) => mtimeMs,
              () => null,
            );
      return id === undefined || time === null ? [] : [{ file, id, time }];
    }),
  );
  return found.flat().toSorted((a, b) => b.time - a.time || (a.file < b.file ? -1 : 1));
}

/** The file's handle is withheld if the file has become another since: saving must ask then. */
async function readSnapshot(file: string, grants: Grants): Promise<Snapshot | null> {
  const text = await readFile(file, 'utf8').catch(() => null);
  const read = text === null ? null : FILE.safeParse(jsonOf(text));
  if (read === null || !read.success) return null;
  const { name, path, saved, text: content } = read.data;
  const now = path === null ? null : await readDocument(path).then(hashOf, () => null);
  const same = path !== null && saved !== null && now === saved;
  return { name, handle: same ? grants.grant(path) : null, text: content };
}
