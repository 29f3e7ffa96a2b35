import { describe, expect, test } from 'vitest';
import { drawError } from '../../../core/fit/budget/draw.ts';
import { deviationOf, stacker, type Spread } from '../../../core/fit/budget/stack.ts';
import { randomFrom } from '../../../core/units/random.ts';
import { within } from './python.ts';

/**
 * Shaft in a housing, gap = -A+B-C+D-E+F-G, from Chase 1999, Tolerance Allocation Methods for Designers (numbers
 * from memory): A retaining ring, B shaft, C bearing, D sleeve, E housing, F sleeve, G bearing; inches.
 */
const SIGNS = [-1, 1, -1, 1, -1, 1, -1];
const CHASE = [0.0015, 0.008, 0.0025, 0.002, 0.006, 0.002, 0.0025];
/** Allocated to a worst case, and to a root sum square, of ±0.015 with the bought parts A, C, G as they are. */
const ALLOCATED_WORST = [0.0015, 0.00378, 0.0025, 0.00094, 0.00283, 0.00094, 0.0025];
const ALLOCATED_LIKELY = [0.0015, 0.01116, 0.0025, 0.00279, 0.00837, 0.00279, 0.0025];

const spreads = (values: readonly number[], distribution: Spread['distribution'] = 'normal') =>
  values.map((value): Spread => ({ value, distribution }));

/** Standard deviation of the sum in a Monte Carlo run, and the sums. */
function simulate(errors: readonly Spread[], samples: number) {
  const random = randomFrom(20_261_125);
  const sums = Array.from({ length: samples }, () =>
    errors.reduce(
      (sum, { value, distribution }, i) => sum + (SIGNS[i] ?? 0) * value * drawError(distribution, random),
      0,
    ),
  );
  return { sums, deviation: Math.sqrt(sums.reduce((sum, each) => sum + each * each, 0) / samples) };
}

describe('stacker', () => {
  test('gives the worst case and the root sum square of the shaft in its housing', () => {
    const { worst, likely } = stacker(spreads(CHASE));
    expect(worst(SIGNS)).toBeCloseTo(0.0245, 12);
    expect(likely(SIGNS)).toBeCloseTo(0.011079, 6);
  });

  test('gives the required ±0.015 for the allocated tolerances', () => {
    expect(stacker(spreads(ALLOCATED_WORST)).worst(SIGNS)).toBeCloseTo(0.015, 4);
    expect(stacker(spreads(ALLOCATED_LIKELY)).likely(SIGNS)).toBeCloseTo(0.015, 4);
  });

  test('agrees with the published standard deviations, normal and uniform, and with a Monte Carlo run', () => {
    for (const [distribution, published] of [
      ['normal', 0.003693087],
      ['uniform', 0.006396614],
    ] as const) {
      const errors = spreads(CHASE, distribution);
      const stacked = Math.hypot(...errors.map(deviationOf));
      expect(stacked).toBeCloseTo(published, 9);
      expect(stacker(errors).likely(SIGNS)).toBeCloseTo(3 * published, 8);
      // The standard error of a standard deviation is about 1 / sqrt(2 n) of it: 0.11 % of 400 000 samples.
      expect(Math.abs(simulate(errors, 400_000).deviation / published - 1)).toBeLessThan(4 * 0.0011);
    }
  });

  test('predicts the share of the shafts within ±0.015 that a Monte Carlo run and Python give', () => {
    const limit = 0.015;
    const sigmas = limit / (stacker(spreads(CHASE)).likely(SIGNS) / 3);
    const yielded = within(sigmas);
    expect(yielded).toBeCloseTo(0.99995127, 7);
    const samples = 400_000;
    const failed = simulate(spreads(CHASE), samples).sums.filter((sum) => Math.abs(sum) > limit).length;
    const expected = samples * (1 - yielded);
    expect(Math.abs(failed - expected)).toBeLessThan(4 * Math.sqrt(expected));
  });

  test('never promises worse than the worst case', () => {
    const one = stacker([{ value: 1, distribution: 'uniform' }]);
    expect(one.likely([1])).toBe(one.worst([1]));
  });
});

describe('drawError', () => {
  // Yields within 1, 2, 3 standard deviations: tables of the normal distribution; here from Python.
  test.for([1, 2, 3])('normal: the share within %d thirds of the tolerance is the tabled one', (sigmas) => {
    const random = randomFrom(3);
    const samples = 300_000;
    let count = 0;
    for (let i = 0; i < samples; i += 1) if (Math.abs(drawError('normal', random)) <= sigmas / 3) count += 1;
    const expected = within(sigmas);
    const error = Math.sqrt((expected * (1 - expected)) / samples);
    expect(Math.abs(count / samples - expected)).toBeLessThan(4 * error);
  });

  // Distribution functions on -1 to 1 in any text: uniform (1 + x) / 2; triangular (1 + x)^2 / 2 below 0.
  test.for([
    ['uniform', -0.5, 0.25],
    ['uniform', 0.2, 0.6],
    ['triangular', -0.5, 0.125],
    ['triangular', 0.5, 0.875],
  ] as const)('%s: the share below %d is %d, and none is past the tolerance', ([shape, x, expected]) => {
    const random = randomFrom(4);
    const drawn = Array.from({ length: 100_000 }, () => drawError(shape, random));
    expect(Math.max(...drawn.map(Math.abs).slice(0, 50_000))).toBeLessThanOrEqual(1);
    const share = drawn.filter((each) => each <= x).length / drawn.length;
    expect(Math.abs(share - expected)).toBeLessThan(
      4 * Math.sqrt((expected * (1 - expected)) / drawn.length),
    );
  });
});
