import { highsSolver } from '../../core/jigs/cover/highs-solver.ts';
import type { LoadSolver } from '../../core/jigs/sharing/lazy-solver.ts';

/** Loads the solver into the worker; its files are fetched when a plan first needs it. */
export const loadSolver: LoadSolver = async () => {
  const [{ default: loadHighs }, { default: wasmUrl }] = await Promise.all([
    import('highs'),
    import('highs/runtime?url'),
  ]);
  return highsSolver(await loadHighs({ locateFile: () => wasmUrl }));
};
