import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { highsSolver } from '../../core/jigs/cover/highs-solver.ts';
import type { LoadSolver } from '../../core/jigs/sharing/lazy-solver.ts';

/** Loads the solver; in the bundle its wasm lies beside the chunks, from source in its package. */
export const loadSolver: LoadSolver = async () => {
  const { default: loadHighs } = await import('highs');
  const beside = ['./highs.wasm', '../highs.wasm'].map((path) =>
    fileURLToPath(new URL(path, import.meta.url)),
  );
  const found = beside.find((path) => existsSync(path));
  return highsSolver(await loadHighs(found === undefined ? {} : { locateFile: () => found }));
};
