import { rename, rm } from 'node:fs/promises';
import { resolve } from 'node:path';
import { clearLeftOvers, leftOvers } from './clear-left-overs.ts';
import { earlierFolder } from './earlier-output.ts';
import { exists } from './exists.ts';
import { retry } from './retry.ts';

/**
 * Undoes what killed runs left half done at a place for an output: where one was killed between moving the old
 * folder aside and the new one into place, the old one comes back; all else is removed.
 */
export async function bringBack(path: string): Promise<void> {
  const target = resolve(path);
  for (const aside of await leftOvers(target, 'old')) {
    // One that is not whole was being removed.
    const whole = (await earlierFolder(aside))?.whole === true;
    if (whole && !(await exists(target))) await retry(() => rename(aside, target));
    else await rm(aside, { recursive: true, force: true });
  }
  await clearLeftOvers(target);
}
