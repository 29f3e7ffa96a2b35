import { zipSync, type Zippable } from 'fflate';
import { ZIP_DATE } from '../../core/files/zip-date.ts';

/** A zip with one folder, whose files are given by their paths within it; sorted and dated alike. */
export function zipFolder(folder: string, files: ReadonlyMap<string, Uint8Array>): Uint8Array {
  const entries: Zippable = {};
  for (const [path, bytes] of [...files].toSorted(([a], [b]) => (a < b ? -1 : 1))) {
    entries[`${folder}/${path}`] = [bytes, { mtime: ZIP_DATE, level: 6 }];
  }
  return zipSync(entries);
}
