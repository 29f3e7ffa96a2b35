import { readFile } from 'node:fs/promises';
import { z } from 'zod';
import { saveFile } from '../files/save-file.ts';

/** How many documents are remembered; a menu of ten can be read at a glance. */
const MAX_RECENT = 10;

const FILE = z.strictObject({
  format: z.literal('overhang-recent'),
  version: z.literal(1),
  paths: z.array(z.string()),
});

/** Paths of documents that were opened or saved, the latest first. */
export interface RecentPaths {
  readonly list: () => Promise<readonly string[]>;
  readonly add: (path: string) => Promise<void>;
}

/** Remembers in a file; one that cannot be read counts as empty, one that cannot be written is let be. */
export function recentPaths(file: string): RecentPaths {
  let known: readonly string[] | null = null;
  const list = async (): Promise<readonly string[]> => {
    known ??= await readPaths(file);
    return known;
  };
  return {
    list,
    async add(path) {
      known = [path, ...(await list()).filter((other) => other !== path)].slice(0, MAX_RECENT);
      const text = JSON.stringify({ format: 'overhang-recent', version: 1, paths: known });
      await saveFile(file, Buffer.from(text), 0o600).catch(() => undefined);
    },
  };
}

async function readPaths(file: string): Promise<readonly string[]> {
  try {
    const read = FILE.safeParse(JSON.parse(await readFile(file, 'utf8')));
    return read.success ? read.data.paths.slice(0, MAX_RECENT) : [];
  } catch {
    return [];
  }
}
