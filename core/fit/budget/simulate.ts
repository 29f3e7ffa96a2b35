import { randomFrom } from '../../units/random.ts';
import { drawError } from './draw.ts';
import type { BudgetModel } from './model.ts';
import { boundGroups } from './reach-lines.ts';
import { reaches } from './reaches.ts';
import { NORMAL_95 } from './share-interval.ts';
import { dot, sparseRow } from './sparse.ts';
import type { Span } from './types.ts';

/** What a Monte Carlo run of one drawer gives. */
export interface Simulated {
  /** Samples that the adjusters bring within all limits. */
  readonly reached: number;
  /** For each place of the model: mm that 99.73 % of the samples are off by at most. */
  readonly spread: readonly SampledSpread[];
}

/** mm, with the 95 % interval of what endless samples would give. */
export interface SampledSpread extends Span {
  readonly value: number;
}

/** Share of a normal distribution within three standard deviations. */
const THREE_SIGMA = 0.997_300_203_936_74;

/**
 * Draws errors, hangs a front with each set of them, and asks whether any setting of the adjusters brings all
 * its gaps in. The same seed gives the same samples, whatever the tolerances are.
 */
export function simulate(model: BudgetModel, samples: number, seed: number): Simulated {
  const random = randomFrom(seed);
  const reachable = reaches(boundGroups(model));
  const tolerances = model.errors.map(({ tolerance }) => tolerance);
  const places = model.places.map(({ byError }) => ({
    row: sparseRow(byError),
    off: new Float64Array(samples),
  }));
  const errors = new Float64Array(model.errors.length);
  let reached = 0;
  for (let sample = 0; sample < samples; sample += 1) {
    for (const [index, { value, distribution }] of tolerances.entries())
      errors[index] = value * drawError(distribution, random);
    for (const { row, off } of places) off[sample] = Math.abs(dot(row, errors));
    if (reachable(errors)) reached += 1;
  }
  return { reached, spread: places.map(({ off }) => quantile(off.toSorted(), THREE_SIGMA)) };
}

/**
 * The value that so great a share of sorted values does not exceed, with its 95 % interval from the ranks of the
 * sample alone, whatever the distribution (Conover, Practical Nonparametric Statistics, quantiles; from memory).
 * The most is the largest value where the sample is too small to bound it.
 */
function quantile(sorted: Float64Array, share: number): SampledSpread {
  const { length } = sorted;
  const at = (rank: number): number => sorted[Math.min(length, Math.max(1, Math.ceil(rank))) - 1] ?? 0;
  const rank = share * length;
  const half = NORMAL_95 * Math.sqrt(length * share * (1 - share));
  return { value: at(rank), least: at(rank - half), most: at(rank + half) };
}
