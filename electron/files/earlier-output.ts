import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, join, relative, sep } from 'node:path';
import { unzipSync } from 'fflate';
import { z } from 'zod';
import { MANIFEST_FORMAT } from '../../core/files/manifest.ts';
import { jsonOf } from '../../shared/json-of.ts';
import { readDocument } from './read-document.ts';

/** Bytes. One that lists ten thousand files has below 2 MiB. */
const MAX_MANIFEST_BYTES = 16 * 1024 * 1024;

/** Bytes of a zip that is looked into; larger ones are none that this program writes. */
const MAX_ZIP_BYTES = 1024 * 1024 * 1024;

/** A folder or zip that this program wrote. */
export interface EarlierOutput {
  /** What it was made from; null where its manifest does not say. */
  readonly madeFrom: string | null;
  /** Every file that the manifest lists is there and has its size. */
  readonly whole: boolean;
  /** With the manifest. */
  readonly files: number;
  /** Paths of files that lie among them and that the manifest does not list: somebody else's. */
  readonly others: readonly string[];
}

/** What systems leave in folders by themselves. */
const LITTER = new Set(['.DS_Store', 'Thumbs.db', 'desktop.ini']);

const manifestSchema = z.object({
  format: z.literal(MANIFEST_FORMAT),
  made_from: z.string().optional(),
  files: z.array(z.object({ path: z.string(), size: z.number() })).default([]),
});

/** Reads the manifest of a folder and looks at the files that are there; null for anything that is not ours. */
export async function earlierFolder(path: string): Promise<EarlierOutput | null> {
  const text = await readDocument(join(path, 'manifest.json')).then(
    (bytes) => new TextDecoder().decode(bytes),
    () => '',
  );
  // Asked for only if the manifest is ours: a folder that is not may be a whole disk.
  const present = async (): Promise<readonly string[]> => {
    const entries = await readdir(path, { recursive: true, withFileTypes: true }).catch(() => []);
    return entries
      .filter((entry) => !entry.isDirectory())
      .map((entry) => relative(path, join(entry.parentPath, entry.name)).replaceAll(sep, '/'));
  };
  return judge(text, present, (file) =>
    stat(join(path, file)).then(
      (found) => (found.isFile() ? found.size : null),
      () => null,
    ),
  );
}

/** The same of a zip, whose files lie in one folder within it. */
export async function earlierZip(path: string): Promise<EarlierOutput | null> {
  const size = await stat(path).then(
    (found) => (found.isFile() ? found.size : Infinity),
    () => Infinity,
  );
  const bytes = size <= MAX_ZIP_BYTES ? await readFile(path).catch(() => null) : null;
  if (bytes === null) return null;
  const sizes = new Map<string, number>();
  let found: Uint8Array | undefined;
  try {
    const [manifest] = Object.values(
      unzipSync(bytes, {
        filter({ name, originalSize }) {
          const within = name.slice(name.indexOf('/') + 1);
          sizes.set(within, originalSize);
          // A small zip can say that it holds more than the machine has room for.
          return within === 'manifest.json' && originalSize <= MAX_MANIFEST_BYTES;
        },
      }),
    );
    found = manifest;
  } catch {
    return null;
  }
  if (found === undefined) return null;
  const present = async (): Promise<readonly string[]> =>
    [...sizes.keys()].filter((name) => name !== '' && !name.endsWith('/'));
  return judge(new TextDecoder().decode(found), present, async (file) => sizes.get(file) ?? null);
}

async function judge(
  text: string,
  present: () => Promise<readonly string[]>,
  sizeOf: (file: string) => Promise<number | null>,
): Promise<EarlierOutput | null> {
  const manifest = manifestSchema.safeParse(jsonOf(text));
  if (!manifest.success) return null;
  const { made_from: madeFrom = null, files } = manifest.data;
  const sizes = await Promise.all(files.map(({ path }) => sizeOf(path)));
  const whole = files.length > 0 && files.every(({ size }, index) => sizes[index] === size);
  const ours = new Set(['manifest.json', ...files.map(({ path }) => path)]);
  const others = (await present())
    .filter((path) => !ours.has(path) && !LITTER.has(basename(path)))
    .toSorted();
  return { madeFrom, whole, files: files.length + 1, others };
}
