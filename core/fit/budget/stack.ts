import type { Tolerance } from '../../rules/types.ts';

/** A tolerance of ±`value` mm, and the shape of its distribution. */
export type Spread = Pick<Tolerance, 'value' | 'distribution'>;

/** `worst`: every error at its worst. `likely`: three standard deviations. */
export type StackWay = 'worst' | 'likely';

/**
 * Standard deviation of an error as a share of its tolerance. A normal error's tolerance is three standard
 * deviations (Scholz 1995); uniform and triangular errors never pass theirs.
 */
const DEVIATION: Readonly<Record<Tolerance['distribution'], number>> = {
  normal: 1 / 3,
  uniform: 1 / Math.sqrt(3),
  triangular: 1 / Math.sqrt(6),
};

/** Standard deviation of an error in mm. */
export const deviationOf = ({ value, distribution }: Spread): number => value * DEVIATION[distribution];

/**
 * How far sums of errors, each times its coefficient, can be off, ± mm. Worst case: the sum of
 * |coefficient| * tolerance. Likely: three standard deviations by the root of the sum of squares, and never
 * more than the worst case; of normal errors alone it is the root sum square of the tolerances (Scholz 1995).
 */
export function stacker(
  errors: readonly Spread[],
): Readonly<Record<StackWay, (coefficients: readonly number[]) => number>> {
  const tolerances = errors.map(({ value }) => value);
  const deviations = errors.map(deviationOf);
  const worst = (coefficients: readonly number[]): number => {
    let sum = 0;
    for (const [index, tolerance] of tolerances.entries())
      sum += Math.abs(coefficients[index] ?? 0) * tolerance;
    return sum;
  };
  const likely = (coefficients: readonly number[]): number => {
    let variance = 0;
    for (const [index, deviation] of deviations.entries())
      variance += ((coefficients[index] ?? 0) * deviation) ** 2;
    return Math.min(3 * Math.sqrt(variance), worst(coefficients));
  };
  return { worst, likely };
}
