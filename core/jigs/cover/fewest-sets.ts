import { lpText, type Row } from './lp-text.ts';
import { bit, reduceSets, type Rows } from './reduce-sets.ts';
import type { CoverSolver, SolverLimits } from './types.ts';

export interface FewestSets {
  readonly chosen: readonly number[];
  /** No cover has fewer sets; equals their number when the choice is proved. */
  readonly bound: number;
}

/** The fewest sets that cover all rows; what reductions leave goes to the solver. */
export async function fewestSets(
  masks: readonly Rows[],
  rowCount: number,
  solver: CoverSolver,
  limits: SolverLimits,
): Promise<FewestSets> {
  const { chosen, sets, rows } = reduceSets(masks, rowCount);
  if (rows.length === 0) return { chosen, bound: chosen.length };
  const name = (set: number): string => `y${set}`;
  const covering: Row[] = rows.map((row) => ({
    terms: sets
      .filter((set) => ((masks[set] ?? 0n) & bit(row)) !== 0n)
      .map((set) => ({ times: 1, name: name(set) })),
    sense: '>=',
    than: 1,
  }));
  const lp = lpText(
    sets.map((set) => ({ times: 1, name: name(set) })),
    covering,
    sets.map(name),
  );
  const { status, bound, valueOf } = await solver(lp, limits);
  const solved = valueOf === null ? null : sets.filter((set) => valueOf(name(set)) > 0.5);
  const greedy = greedySets(masks, sets, rows);
  const rest = solved !== null && solved.length <= greedy.length ? solved : greedy;
  // A row remains, so one set at least; whole sets, so a broken bound counts up.
  const least = status === 'optimal' ? rest.length : Math.max(1, Math.ceil(bound - WHOLE));
  return { chosen: [...chosen, ...rest], bound: chosen.length + Math.min(least, rest.length) };
}

/** A bound this little above a whole number is that number: the solver's own tolerance. */
const WHOLE = 1e-6;

/** Always the set that covers most of what is open: not the best, but a cover when the solver was cut short. */
function greedySets(
  masks: readonly Rows[],
  sets: readonly number[],
  rows: readonly number[],
): readonly number[] {
  const chosen: number[] = [];
  let open = [...rows];
  while (open.length > 0) {
    const gains = sets.map((set) => open.filter((row) => ((masks[set] ?? 0n) & bit(row)) !== 0n).length);
    const set = sets[gains.indexOf(Math.max(...gains))];
    if (set === undefined) throw new Error('the sets do not cover all rows');
    chosen.push(set);
    open = open.filter((row) => ((masks[set] ?? 0n) & bit(row)) === 0n);
  }
  return chosen;
}
