import { stat } from 'node:fs/promises';
import { basename, dirname, extname, resolve } from 'node:path';
import { extensionOf, PROJECT_EXTENSIONS } from '../../shared/document-kinds.ts';
import { exists } from '../files/exists.ts';
import { keepPrevious } from '../files/keep-previous.ts';
import { hashOf, readDocument } from '../files/read-document.ts';
import { reasonOf, Refusal } from '../files/refusal.ts';
import { saveFile, type SaveSteps } from '../files/save-file.ts';
import type { Grants } from './grants.ts';
import type { Documents, DocumentState } from './ports.ts';
import type { RecentPaths } from './recent.ts';

/** Asks for a path; null when the user thought better of it. */
export interface Dialogs {
  readonly openDocument: () => Promise<string | null>;
  readonly saveDocument: (suggestedName: string) => Promise<string | null>;
  readonly outputFolder: () => Promise<string | null>;
}

export interface DiskDocumentParts {
  readonly dialogs: Dialogs;
  readonly grants: Grants;
  readonly recent: RecentPaths;
  /** Content of files as they were last read or written, by path: SHA-256. */
  readonly hashes: Map<string, string>;
  readonly changed: (state: DocumentState) => void;
  /** A document was opened or saved: menus and the system's own list may want to know. */
  readonly used: (path: string) => void;
  /** Calls that a test replaces by failing ones. */
  readonly steps?: Partial<SaveSteps>;
}

/** Documents as files of the disk. */
export function diskDocuments(parts: DiskDocumentParts): Documents {
  const { dialogs, grants, recent, hashes } = parts;
  const use = async (place: string, bytes: Uint8Array): Promise<{ name: string; handle: string }> => {
    const path = resolve(place);
    hashes.set(path, hashOf(bytes));
    await recent.add(path);
    parts.used(path);
    return { name: basename(path), handle: grants.grant(path) };
  };
  return {
    async open(source) {
      const path = source === null ? await dialogs.openDocument() : granted(grants, source);
      if (path === null) return null;
      const bytes = await readDocument(path);
      return { ...(await use(path, bytes)), bytes };
    },
    async save(handle, suggestedName, text, replaceChanged = false) {
      const known = handle === null ? null : granted(grants, handle);
      const path = holdsSameKind(known, suggestedName) ? known : await askPlace(dialogs, suggestedName);
      if (path === null) return null;
      const bytes = Buffer.from(text, 'utf8');
      if (path === known && !replaceChanged && (await isChanged(path, hashes.get(path)))) {
        return { changedOutside: basename(path) };
      }
      try {
        await keepPrevious(path, () => saveFile(path, bytes, undefined, parts.steps));
      } catch (problem) {
        throw new Refusal(`${basename(path)} cannot be saved: ${reasonOf(problem)}`);
      }
      return use(path, bytes);
    },
    async recent() {
      const paths = await recent.list();
      const there = await Promise.all(paths.map(isFile));
      return paths
        .filter((_, index) => there[index] === true)
        .map((path) => ({ handle: grants.grant(path), name: basename(path), folder: dirname(path) }));
    },
    changed: parts.changed,
  };
}

/** Whether a file is there and no longer what it was; one that is gone is written anew. */
async function isChanged(path: string, before: string | undefined): Promise<boolean> {
  if (before === undefined || !(await exists(path))) return false;
  // What cannot be read any more, or has grown too large, is no longer what it was.
  const now = await readDocument(path).then(hashOf, () => null);
  return now !== before;
}

function granted(grants: Grants, handle: string): string {
  const path = grants.pathOf(handle);
  if (path === undefined) throw new Refusal('this file was not opened by you; choose it again');
  return path;
}

/** A project that was made of a table asks where to go: it never takes the table's place. */
const holdsSameKind = (path: string | null, suggestedName: string): boolean =>
  path !== null && kindOf(path) === kindOf(suggestedName);

const kindOf = (name: string): string => {
  const extension = extensionOf(name);
  return (PROJECT_EXTENSIONS as readonly string[]).includes(extension) ? 'project' : extension;
};

async function askPlace(dialogs: Dialogs, suggestedName: string): Promise<string | null> {
  const path = await dialogs.saveDocument(suggestedName);
  if (path === null || extname(path) !== '') return path;
  const full = `${path}.${extensionOf(suggestedName) || PROJECT_EXTENSIONS[0]}`;
  // The dialog asked about the name without its extension only.
  if (await isFile(full))
    throw new Refusal(`${basename(full)} exists; choose it by its whole name to replace it`);
  return full;
}

const isFile = (path: string): Promise<boolean> =>
  stat(path).then(
    (found) => found.isFile(),
    () => false,
  );
