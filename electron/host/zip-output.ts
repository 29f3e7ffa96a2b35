import { safeName } from '../../core/files/file-name.ts';
import { bytesOf } from '../files/bytes-of.ts';
import { hashOf } from '../files/read-document.ts';
import { Refusal } from '../files/refusal.ts';
import { zipFolder } from '../files/zip-folder.ts';
import type { Output } from '../messages/ports.ts';
import type { Shelf } from './shelf.ts';

/** Bytes of one folder before it is packed: 256 MiB. An order of 500 drawers is below 64 MiB. */
const MAX_FOLDER_BYTES = 256 * 1024 * 1024;

/** Folders of cut files in memory; finished, each is a zip to download. */
export const zipOutput = (downloads: Shelf): Output => ({
  async begin(suggestedName) {
    const folder = safeName(suggestedName);
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
        const id = downloads.put({ name, bytes: zipFolder(folder, files) });
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
