import type { Bound, BoundGroup } from './reach-lines.ts';
import { dot, sparseRow } from './sparse.ts';

/** mm. A limit that a float's noise breaks is kept. */
const NOISE = 1e-9;

/** Whether any turn leaves room for both moves, given the errors. */
export type Reaches = (errors: Float64Array) => boolean;

/**
 * Prepares the question of every sample: with these errors, does some setting of the adjusters keep every
 * limit? Each pair of a lower and an upper bound allows the turns on one side of a point; what all allow is an
 * interval, empty or not.
 */
export function reaches(groups: readonly BoundGroup[]): Reaches {
  const prepared = groups.map(({ lower, upper }) => ({
    low: evaluator(lower),
    high: evaluator(upper),
    pairs: lower.flatMap((below, i) => upper.map((above, j) => ({ i, j, slope: above.slope - below.slope }))),
  }));
  return (errors) => {
    let [least, most] = [-Infinity, Infinity];
    for (const { low, high, pairs } of prepared) {
      const [lows, highs] = [low(errors), high(errors)];
      for (const { i, j, slope } of pairs) {
        const room = (highs[j] ?? 0) - (lows[i] ?? 0);
        if (slope > 0) least = Math.max(least, -room / slope);
        else if (slope < 0) most = Math.min(most, -room / slope);
        else if (room < -NOISE) return false;
      }
    }
    return least <= most + NOISE;
  };
}

/** The bounds without their slopes, into a list that is used again. */
function evaluator(bounds: readonly Bound[]): (errors: Float64Array) => Float64Array {
  const rows = bounds.map(({ constant, perError }) => ({ constant, row: sparseRow(perError) }));
  const values = new Float64Array(bounds.length);
  return (errors) => {
    for (const [index, { constant, row }] of rows.entries()) values[index] = constant + dot(row, errors);
    return values;
  };
}
