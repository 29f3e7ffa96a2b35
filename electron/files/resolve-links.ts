import { readlink, realpath } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';

/** What stands behind links, by its absolute path; also behind a link to what is not there yet, to one step. */
export async function resolveLinks(path: string): Promise<string> {
  const absolute = resolve(path);
  try {
    return await realpath(absolute);
  } catch {
    const link = await readlink(absolute).catch(() => null);
    return link === null ? absolute : resolve(dirname(absolute), link);
  }
}
