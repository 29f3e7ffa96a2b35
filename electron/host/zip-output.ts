import { zipSync, type Zippable } from 'fflate';
import { bytesOf } from '../files/bytes-of.ts';
import { hashOf } from '../files/read-document.ts';
import { Refusal } from '../files/refusal.ts';
import { folderName } from '../messages/output-path.ts';
import type { Output } from '../messages/ports.ts';
import type { Shelf } from './shelf.ts';

/** Bytes of one folder before it is packed: 256 MiB. An order of 500 drawers is below 64 MiB. */
const MAX_FOLDER_BYTES = 256 * 1024 * 1024;

/** The first date that a zip can hold, in local time as zips have it: the same files give the same bytes. */
const DATE = new Date(1980, 0, 1);

/** Folders of cut files in memory; finished, each is a zip to download. */
export const zipOutput = (downloads: Shelf): Output => ({
  async begin(suggestedName) {
    const folder = folderName(suggestedName);
    const files = new Map<string, Uint8Array>();
    let total = 0;
    return {
      async write(path, content) {
        const bytes = bytesOf(content);
        // Two names that differ in case only would fall together when the zip is unpacked on some systems.
        const key = path.toLowerCase();
        if ([...files.keys()].some((other) => other.toLowerCase() === key)) {
          throw new Refusal(`${path} is written already`);
        }
        total += bytes.length;
        if (total > MAX_FOLDER_BYTES) throw new Refusal('the folder is larger than the host can hold');
        files.set(path, bytes);
        return { size: bytes.length, sha256: hashOf(bytes) };
      },
      async finish() {
        const name = `${folder}.zip`;
        const id = downloads.put({ name, bytes: zip(folder, files) });
        files.clear();
        return { place: name, download: `/download/${id}` };
      },
      async discard() {
        files.clear();
      },
    };
  },
  async show() {
    throw new Refusal('the zip file is among the downloads of the browser');
  },
});

/** Sorted by path and dated alike, within a folder of its own. */
function zip(folder: string, files: ReadonlyMap<string, Uint8Array>): Uint8Array {
  const entries: Zippable = {};
  for (const [path, bytes] of [...files].toSorted(([a], [b]) => (a < b ? -1 : 1))) {
    entries[`${folder}/${path}`] = [bytes, { mtime: DATE, level: 6 }];
  }
  return zipSync(entries);
}
