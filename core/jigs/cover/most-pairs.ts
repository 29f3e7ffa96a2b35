import { lpText, type Row } from './lp-text.ts';
import type { CoverSolver, SolverLimits } from './types.ts';

export type Pair = readonly [number, number];

/** More than this goes to the solver. */
const BY_TABLE = 16;

/**
 * The most pairs of `count` items, each in one pair at most, that are allowed: a largest matching. The items are
 * taken as sorted, and if pairing each with the one half the list further on works, that is the answer, for it
 * keeps the two of a pair well apart. Exact unless the solver is cut short.
 */
export async function mostPairs(
  count: number,
  canPair: (a: number, b: number) => boolean,
  solver: CoverSolver,
  limits: SolverLimits,
): Promise<readonly Pair[]> {
  const half = Math.ceil(count / 2);
  const simple = Array.from({ length: count - half }, (_, item): Pair => [item, item + half]);
  if (simple.every(([a, b]) => canPair(a, b))) return simple;
  const pairs = Array.from({ length: count }, (_, a) =>
    Array.from({ length: count - a - 1 }, (_, next): Pair => [a, a + 1 + next]),
  )
    .flat()
    .filter(([a, b]) => canPair(a, b));
  if (pairs.length === 0) return [];
  return count <= BY_TABLE ? byTable(count, pairs) : bySolver(count, pairs, solver, limits);
}

/** The first open item stays alone or goes with another; what is best for the rest is kept by its bits. */
function byTable(count: number, pairs: readonly Pair[]): readonly Pair[] {
  const known = new Map<number, readonly Pair[]>();
  const best = (open: number): readonly Pair[] => {
    if (open === 0) return [];
    const seen = known.get(open);
    if (seen !== undefined) return seen;
    const first = 31 - Math.clz32(open & -open);
    const without = open & ~(1 << first);
    let found = best(without);
    for (const pair of pairs) {
      const [a, b] = pair;
      if (a !== first || (without & (1 << b)) === 0) continue;
      const rest = best(without & ~(1 << b));
      if (rest.length + 1 > found.length) found = [pair, ...rest];
    }
    known.set(open, found);
    return found;
  };
  return best(2 ** count - 1);
}

async function bySolver(
  count: number,
  pairs: readonly Pair[],
  solver: CoverSolver,
  limits: SolverLimits,
): Promise<readonly Pair[]> {
  const name = (pair: number): string => `z${pair}`;
  const rows = Array.from({ length: count }, (_, item): Row => ({
    terms: pairs.flatMap((pair, index) => (pair.includes(item) ? [{ times: 1, name: name(index) }] : [])),
    sense: '<=',
    than: 1,
  })).filter(({ terms }) => terms.length > 1);
  const lp = lpText(
    pairs.map((_, index) => ({ times: -1, name: name(index) })),
    rows,
    pairs.map((_, index) => name(index)),
  );
  const { valueOf } = await solver(lp, limits);
  return valueOf === null ? [] : pairs.filter((_, index) => valueOf(name(index)) > 0.5);
}
