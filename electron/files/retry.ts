import { setTimeout as wait } from 'node:timers/promises';
import { codeOf } from './refusal.ts';

/** What Windows answers while a virus scanner or an indexer looks at a file; gone a moment later. */
const PASSING = new Set(['EPERM', 'EBUSY', 'EACCES']);

/** Waits between tries, ms; together 0.62 s. From memory: scanners hold a new file for some tenths of a second. */
const WAITS = [20, 40, 80, 160, 320];

/** Does it again, after a pause, as long as the system refuses for a reason that may pass. */
export async function retry<T>(task: () => Promise<T>, waits: readonly number[] = WAITS): Promise<T> {
  for (const pause of waits) {
    try {
      return await task();
    } catch (problem) {
      if (!PASSING.has(codeOf(problem))) throw problem;
      await wait(pause);
    }
  }
  return task();
}
