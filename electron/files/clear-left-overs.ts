import { readdir, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { earlierFolder } from './earlier-output.ts';
import { exists } from './exists.ts';
import { retry } from './retry.ts';
import { leftOver } from './temporary-name.ts';

/**
 * Removes what killed runs left beside `path` while they wrote it. Where one was killed between moving the old
 * output aside and the new one into place, the old one comes back first.
 */
export async function clearLeftOvers(path: string): Promise<void> {
  const target = resolve(path);
  const folder = dirname(target);
  const hidden = (await readdir(folder).catch(() => [])).filter((name) => name.startsWith('.overhang-'));
  for (const name of hidden) {
    const place = join(folder, name);
    const age = await stat(place).then(
      ({ mtimeMs }) => Date.now() - mtimeMs,
      () => 0,
    );
    if (leftOver(name, basename(target), 'old', age)) {
      // One that is not whole was being removed.
      if (!(await exists(target)) && (await earlierFolder(place))?.whole === true) {
        await retry(() => rename(place, target));
      } else await rm(place, { recursive: true, force: true });
    } else if (leftOver(name, basename(target), 'new', age)) {
      await rm(place, { recursive: true, force: true });
    }
  }
}
