import { readdir, rm, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { leftOver, type TemporaryKind } from './temporary-name.ts';

/** Removes what killed runs left beside `path` while they wrote it. */
export async function clearLeftOvers(path: string): Promise<void> {
  for (const place of await leftOvers(path, 'new')) await rm(place, { recursive: true, force: true });
}

/** The paths of what killed runs left of `path`. */
export async function leftOvers(path: string, kind: TemporaryKind): Promise<readonly string[]> {
  const target = resolve(path);
  const folder = dirname(target);
  const hidden = (await readdir(folder).catch(() => [])).filter((name) => name.startsWith('.overhang-'));
  const found: string[] = [];
  for (const name of hidden) {
    const place = join(folder, name);
    const age = await stat(place).then(
      ({ mtimeMs }) => Date.now() - mtimeMs,
      () => 0,
    );
    if (leftOver(name, basename(target), kind, age)) found.push(place);
  }
  return found;
}
