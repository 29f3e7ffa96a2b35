import type { BundleFile } from '../../core/bundle.ts';
import type { ListedFile } from '../../core/files/manifest.ts';
import type { FreshOutput } from './fresh-output.ts';

/** Files that may be under way at once: enough to keep a disk busy, few enough to hold in memory. */
const MOST = 16;

/** Writes files while the next ones are being made. */
export interface WriteAhead {
  /** Resolves when there is room for another file; rejects when an earlier one could not be written. */
  readonly put: (file: BundleFile) => Promise<void>;
  /** Resolves when all are written; rejects when one could not be. */
  readonly all: () => Promise<readonly ListedFile[]>;
  /** Resolves when nothing is under way any more, whatever became of it. */
  readonly ended: () => Promise<void>;
}

export function writeAhead({ write }: Pick<FreshOutput, 'write'>): WriteAhead {
  const listed: ListedFile[] = [];
  const underWay = new Set<Promise<void>>();
  let failure: { readonly problem: unknown } | null = null;

  async function writeOne(file: BundleFile): Promise<void> {
    try {
      listed.push(await write(file));
    } catch (problem) {
      failure ??= { problem };
    }
  }
  function mayGoOn(): void {
    if (failure !== null) throw failure.problem;
  }
  async function ended(): Promise<void> {
    await Promise.all(underWay);
  }

  return {
    async put(file) {
      mayGoOn();
      const one = writeOne(file).finally(() => underWay.delete(one));
      underWay.add(one);
      if (underWay.size >= MOST) await Promise.race(underWay);
      mayGoOn();
    },
    async all() {
      await ended();
      mayGoOn();
      return listed;
    },
    ended,
  };
}
