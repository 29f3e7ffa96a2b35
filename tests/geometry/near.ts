/**
 * What to say if a number is not within a tolerance of the wanted one, or null if it is: both values, the
 * tolerance and the miss. To be used as `expect(missed(actual, wanted, within)).toBeNull()`.
 */
export function missed(actual: number, wanted: number, within: number, what = 'value'): string | null {
  const off = Math.abs(actual - wanted);
  return off <= within ? null : `${what}: got ${actual}, wanted ${wanted} within ${within}, it is ${off} off`;
}

/** The same for a list of numbers that should all be near one value: the worst is named. */
export const worstMiss = (
  actual: readonly number[],
  wanted: number,
  within: number,
  what = 'value',
): string | null =>
  missed(
    actual.reduce((worst, one) => (Math.abs(one - wanted) > Math.abs(worst - wanted) ? one : worst), wanted),
    wanted,
    within,
    what,
  );
