import type { CoverSolver } from '../cover/types.ts';

/** Loads the solver. */
export type LoadSolver = () => Promise<CoverSolver>;

interface LazySolver {
  readonly solve: CoverSolver;
  /** Why it could not be loaded; null where it was, or was not needed. */
  readonly failure: () => string | null;
}

/** A solver that is loaded when a plan first needs it. */
export function lazySolver(load: LoadSolver): LazySolver {
  let failure: string | null = null;
  return {
    async solve(lp, limits) {
      const solve = await load().catch((problem: unknown) => {
        failure = problem instanceof Error ? problem.message : String(problem);
        throw problem;
      });
      return solve(lp, limits);
    },
    failure: () => failure,
  };
}
