/** A computation whose results are kept as long as its arguments are the same. */
export interface KeyedMemo<K, A extends readonly unknown[], R> {
  /** The kept result for the key if the arguments are the same; else a new one. */
  readonly get: (key: K, ...args: A) => R;
  /** Forgets the results that were not asked for since the last time. */
  readonly endRound: () => void;
}

interface MemoOptions<A, R> {
  /** Whether arguments are the same; by default if they are identical, item by item. */
  readonly same?: (before: A, after: A) => boolean;
  /**
   * Lets a new result give way to the one before it, where both say the same, so that what is made of it can
   * be kept too.
   */
  readonly keep?: (before: R, after: R) => R;
}

/** Keeps one result for each key. */
export function keyedMemo<K, A extends readonly unknown[], R>(
  compute: (...args: A) => R,
  { same = sameItems, keep = (_before, after) => after }: MemoOptions<A, R> = {},
): KeyedMemo<K, A, R> {
  const known = new Map<K, { args: A; result: R; round: number }>();
  let round = 0;
  return {
    get(key, ...args) {
      const entry = known.get(key);
      if (entry === undefined) {
        const result = compute(...args);
        known.set(key, { args, result, round });
        return result;
      }
      entry.round = round;
      if (!same(entry.args, args)) {
        entry.result = keep(entry.result, compute(...args));
        entry.args = args;
      }
      return entry.result;
    },
    endRound() {
      known.forEach((entry, key) => {
        if (entry.round !== round) known.delete(key);
      });
      round += 1;
    },
  };
}

/** Whether two lists hold the very same items. */
export function sameItems(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a.length !== b.length) return false;
  for (let index = 0; index < a.length; index += 1) if (!Object.is(a[index], b[index])) return false;
  return true;
}

/** The list that was there before if the later one holds the very same items. */
export const keepList = <T>(before: readonly T[] | undefined, after: readonly T[]): readonly T[] =>
  before !== undefined && sameItems(before, after) ? before : after;
