import type { Highs } from 'highs';
import type { CoverSolution, CoverSolver } from './types.ts';

/** HiGHS's code for "a feasible point is at hand" in `primal_solution_status`. */
const FEASIBLE = 2;

/** A loaded HiGHS as the solver of covers. Loading it, and finding its wasm, is the caller's. */
export const highsSolver =
  (highs: Highs): CoverSolver =>
  (lp, { seconds, nodes }) =>
    highs.withModel({ format: 'lp', data: lp }, (model) => {
      model.options.set({
        output_flag: false,
        // The default gap of 1e-4 would call a plan optimal that is not.
        mip_rel_gap: 0,
        mip_abs_gap: 0,
        ...(seconds === undefined ? {} : { time_limit: seconds }),
        ...(nodes === undefined ? {} : { mip_max_nodes: nodes }),
      });
      model.run();
      const status = model.getModelStatus();
      const { optimal, timeLimit, solutionLimit, interrupted } = highs.constants.modelStatus;
      const limits: readonly number[] = [timeLimit, solutionLimit, interrupted];
      if (status !== optimal && !limits.includes(status)) {
        throw new Error(
          `the solver ended with model status ${status}; ${optimal} (optimal) or a limit was expected`,
        );
      }
      const values =
        model.info.get('primal_solution_status') === FEASIBLE ? model.getSolution().colValue : null;
      const columns = new Map(
        Array.from(values ?? [], (value, column) => [model.getColName(column), value] as const),
      );
      const solution: CoverSolution = {
        status: status === optimal ? 'optimal' : 'limit',
        bound: Number(model.info.get('mip_dual_bound')),
        valueOf: values === null ? null : (name) => columns.get(name) ?? 0,
      };
      return solution;
    });
