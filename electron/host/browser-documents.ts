import { basename } from 'node:path';
import { safeName } from '../../core/files/file-name.ts';
import { extensionOf, isDocumentName, PROJECT_EXTENSIONS } from '../../shared/document-kinds.ts';
import { Refusal } from '../files/refusal.ts';
import type { Documents } from '../messages/ports.ts';
import type { Shelf } from './shelf.ts';

/** Documents that come as uploads and go as downloads: the host touches no file of the user's. */
export const browserDocuments = (uploads: Shelf, downloads: Shelf): Documents => ({
  async open(source) {
    if (source === null) throw new Refusal('choose a file in the page');
    const file = uploads.take(source);
    if (file === undefined) throw new Refusal('the file is not there any more; choose it again');
    if (!isDocumentName(file.name)) throw new Refusal('only projects and order tables (CSV) can be opened');
    return { name: file.name, handle: null, bytes: file.bytes };
  },
  async save(_handle, suggestedName, text) {
    const name = fileName(suggestedName);
    const id = downloads.put({ name, bytes: Buffer.from(text, 'utf8') });
    return { name, handle: null, download: `/download/${id}` };
  },
  recent: async () => [],
  // The page itself guards its tab.
  changed: () => undefined,
});

function fileName(suggested: string): string {
  const extension = extensionOf(suggested);
  const stem = safeName(basename(suggested, extension === '' ? '' : suggested.slice(-extension.length - 1)));
  return `${stem}.${isDocumentName(suggested) ? extension : PROJECT_EXTENSIONS[0]}`;
}
