import { randomUUID } from 'node:crypto';

export interface KeptFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Files in memory, each under an id that cannot be guessed; the oldest make way. */
export interface Shelf {
  readonly put: (file: KeptFile) => string;
  readonly get: (id: string) => KeptFile | undefined;
  readonly take: (id: string) => KeptFile | undefined;
}

/** Holds no more files, and no more bytes together, than given; the newest stays whatever its size. */
export function createShelf(maxFiles: number, maxBytes: number): Shelf {
  const files = new Map<string, KeptFile>();
  const total = (): number => [...files.values()].reduce((sum, { bytes }) => sum + bytes.length, 0);
  return {
    put(file) {
      const id = randomUUID();
      files.set(id, file);
      for (const oldest of files.keys()) {
        if (oldest === id || (files.size <= maxFiles && total() <= maxBytes)) break;
        files.delete(oldest);
      }
      return id;
    },
    get: (id) => files.get(id),
    take(id) {
      const file = files.get(id);
      files.delete(id);
      return file;
    },
  };
}
