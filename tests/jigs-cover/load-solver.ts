import highsLoader from 'highs';
import { highsSolver } from '../../core/jigs/cover/highs-solver.ts';
import type { CoverSolver } from '../../core/jigs/cover/types.ts';

const solver = highsSolver(await highsLoader());

/** The solver, and how often it was called. */
export function countedSolver(): { readonly solve: CoverSolver; readonly calls: () => number } {
  let calls = 0;
  return {
    solve: (lp, limits) => {
      calls += 1;
      return solver(lp, limits);
    },
    calls: () => calls,
  };
}

export const solve: CoverSolver = solver;

/** For plans that must come without it. */
export const noSolver: CoverSolver = () => {
  throw new Error('the solver was called');
};
