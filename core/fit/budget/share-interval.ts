/** A share that was counted in a sample, with its confidence interval. */
export interface SampledShare {
  readonly share: number;
  readonly low: number;
  readonly high: number;
  readonly samples: number;
}

/** Two-sided 95 % point of the normal distribution. */
export const NORMAL_95 = 1.959_963_984_540_054;

/** A share with its 95 % score interval (Wilson 1927), which holds for shares near 0 and 1 too. */
export function shareInterval(count: number, samples: number): SampledShare {
  if (!(samples > 0)) throw new RangeError(`shareInterval: no samples: ${samples}`);
  const share = count / samples;
  const z2 = NORMAL_95 ** 2;
  const middle = (share + z2 / (2 * samples)) / (1 + z2 / samples);
  const half =
    (NORMAL_95 / (1 + z2 / samples)) *
    Math.sqrt((share * (1 - share)) / samples + z2 / (4 * samples * samples));
  return {
    share,
    low: count === 0 ? 0 : Math.max(0, middle - half),
    high: count === samples ? 1 : Math.min(1, middle + half),
    samples,
  };
}
