import { createHash, randomUUID } from 'node:crypto';
import { hostname } from 'node:os';
import { basename } from 'node:path';
import { codeOf } from './refusal.ts';

/** `new` is being written; `old` made way for a new one that is whole. */
export type TemporaryKind = 'new' | 'old';

const shortHash = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 16);

/** This run of the program, as far as names need to tell it from an earlier one of the same process number. */
const RUN = randomUUID();
let count = 0;
const HOST = shortHash(hostname()).slice(0, 8);

/** ms. Nothing of ours is in the making for longer: a day. */
const LONGEST = 24 * 60 * 60 * 1000;

/**
 * The hidden name that what is to be called `target` has until it is whole. It says who writes it, so that a
 * later run knows what a killed one left: `.overhang-<target>-<host>-<process>-<run>-<number>.new`. Its length does
 * not depend on the target's, whose own may be all that the system takes.
 */
export function temporaryName(target: string, kind: TemporaryKind): string {
  count += 1;
  return `.overhang-${shortHash(basename(target))}-${HOST}-${process.pid}-${RUN}-${count}.${kind}`;
}

/** Whether a name is one that an ended run gave to `target`; `age` in ms. Of a run elsewhere only age tells. */
export function leftOver(name: string, target: string, kind: TemporaryKind, age: number): boolean {
  const start = `.overhang-${shortHash(basename(target))}-`;
  if (!name.startsWith(start) || !name.endsWith(`.${kind}`)) return false;
  const [, host, pid, run] =
    /^([0-9a-f]{8})-(\d{1,10})-([0-9a-f-]{36})-\d+\.\w+$/.exec(name.slice(start.length)) ?? [];
  if (host === undefined || run === RUN) return false;
  if (age > LONGEST) return true;
  return host === HOST && (Number(pid) === process.pid || !lives(Number(pid)));
}

function lives(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (problem) {
    return codeOf(problem) !== 'ESRCH';
  }
}
