import { deviationOf, type Spread, type StackWay } from './stack.ts';
import { growthOf, type Combination } from './tight-sets.ts';

/**
 * How far errors can take the slack of a set down, as `stacker` has it of a row of coefficients; without the row,
 * as there are hundreds of sets. `deviation` is the standard one.
 */
export function setSpread(
  errors: readonly Spread[],
): (set: Combination) => Readonly<Record<StackWay | 'deviation', number>> {
  const tolerances = Float64Array.from(errors, ({ value }) => value);
  const deviations = Float64Array.from(errors, deviationOf);
  return (set) => {
    let [worst, variance] = [0, 0];
    for (let error = 0; error < tolerances.length; error += 1) {
      const growth = growthOf(set, error);
      worst += Math.abs(growth) * (tolerances[error] ?? 0);
      variance += (growth * (deviations[error] ?? 0)) ** 2;
    }
    const deviation = Math.sqrt(variance);
    return { worst, likely: Math.min(3 * deviation, worst), deviation };
  };
}
