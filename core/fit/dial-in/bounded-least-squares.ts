import type { Span } from '../budget/types.ts';

/** One equation: constant + coefficients . unknowns should be 0. */
export interface Equation {
  readonly constant: number;
  readonly coefficients: readonly number[];
}

/** So little that it only decides between solutions that are equally good: the smaller unknowns win. */
const RIDGE = 1e-10;

/** A solution that passes its bound by float noise keeps it. */
const NOISE = 1e-9;

/**
 * The unknowns, each within its bounds, that bring all equations nearest to 0 by least squares. Each unknown
 * is tried free and at either bound; of these few the best one is the solution, since the sum of squares is
 * convex. For three unknowns at most.
 */
export function boundedLeastSquares(
  equations: readonly Equation[],
  bounds: readonly Span[],
): readonly number[] {
  const fixings = bounds.reduce<readonly (readonly (number | null)[])[]>(
    (before, { least, most }) =>
      before.flatMap((fixed) =>
        [null, ...[least, most].filter(Number.isFinite)].map((value) => [...fixed, value]),
      ),
    [[]],
  );
  let best: { readonly unknowns: readonly number[]; readonly cost: number } | null = null;
  for (const fixed of fixings) {
    const unknowns = solveFree(equations, fixed);
    const allowed = unknowns.every((value, index) => {
      const { least, most } = bounds[index] ?? { least: 0, most: 0 };
      return value >= least - NOISE && value <= most + NOISE;
    });
    if (!allowed) continue;
    const cost = costOf(equations, unknowns);
    if (best === null || cost < best.cost) best = { unknowns, cost };
  }
  if (best === null) throw new RangeError('boundedLeastSquares: a lower bound is above its upper one');
  return best.unknowns;
}

function costOf(equations: readonly Equation[], unknowns: readonly number[]): number {
  const squares = equations.reduce((sum, { constant, coefficients }) => {
    const off = coefficients.reduce((total, each, index) => total + each * (unknowns[index] ?? 0), constant);
    return sum + off * off;
  }, 0);
  return squares + RIDGE * unknowns.reduce((sum, value) => sum + value * value, 0);
}

/** Least squares in the unknowns that are not fixed, by the normal equations. */
function solveFree(equations: readonly Equation[], fixed: readonly (number | null)[]): readonly number[] {
  const free = fixed.flatMap((value, index) => (value === null ? [index] : []));
  const rows = free.map((i) => [
    ...free.map((j) => sumOf(equations, ({ coefficients }) => at(coefficients, i) * at(coefficients, j))),
    -sumOf(equations, ({ coefficients, constant }) => {
      const known = fixed.reduce<number>(
        (sum, value, index) => sum + at(coefficients, index) * (value ?? 0),
        constant,
      );
      return at(coefficients, i) * known;
    }),
  ]);
  for (const [index, row] of rows.entries()) row[index] = at(row, index) + RIDGE;
  const solved = eliminate(rows);
  return fixed.map((value, index) => value ?? at(solved, free.indexOf(index)));
}

const at = (values: readonly number[], index: number): number => values[index] ?? 0;

const sumOf = (equations: readonly Equation[], of: (equation: Equation) => number): number =>
  equations.reduce((sum, equation) => sum + of(equation), 0);

/** Gauss and Jordan on a symmetric positive definite system, whose pivots need no search. */
function eliminate(rows: readonly (readonly number[])[]): readonly number[] {
  let work = rows;
  for (let pivot = 0; pivot < rows.length; pivot += 1) {
    const own = work[pivot] ?? [];
    const scaled = own.map((value) => value / at(own, pivot));
    work = work.map((row, index) =>
      index === pivot ? scaled : row.map((value, column) => value - at(row, pivot) * at(scaled, column)),
    );
  }
  return work.map((row) => at(row, rows.length));
}
