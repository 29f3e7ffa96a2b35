import type { StockScrew } from '../rules/fastening-types.ts';
import type { DrawerContext } from './drawer-context.ts';
import { placeKey } from './place-key.ts';
import { placeProblem } from './place-problem.ts';
import type { PlaceSpec } from './place-spec.ts';
import type { Ways } from './smallest-angle.ts';
import { solvePlace } from './solve-place.ts';
import type { SolvedPlace } from './solve-place.ts';

/** Finds the place of a screw that may lean some ways; null: no limit gives. For drawers of one standard. */
export type Solver = (
  context: DrawerContext,
  screw: StockScrew,
  spec: PlaceSpec,
  ways: Ways,
) => SolvedPlace | null;

/** A solver that solves equal places once: left and right corners are mostly alike, and so are drawers. */
export function memoSolver(): Solver {
  const known = new Map<string, SolvedPlace | null>();
  return (context, screw, spec, ways) => {
    const key = placeKey(context, screw, spec, ways);
    const found = known.get(key);
    if (found !== undefined) return found;
    const solved = solvePlace({ ...placeProblem(context, screw, spec), ways });
    known.set(key, solved);
    return solved;
  };
}
