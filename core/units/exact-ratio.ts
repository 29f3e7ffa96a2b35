/**
 * The number nearest to `numerator / denominator`, rounded once; the denominator is above 0.
 *
 * Two steps such as `23 / 16 * 25.4` round twice and can differ in the last bit from the same
 * length written as a decimal: `exactRatio(23n * 254n, 160n)` does not.
 */
export function exactRatio(numerator: bigint, denominator: bigint): number {
  if (numerator < 0n) return -exactRatio(-numerator, denominator);
  if (numerator <= SAFE && denominator <= SAFE) return Number(numerator) / Number(denominator);
  // A quotient of 66 bits or more, its last bit set when anything is left over, rounds as the ratio does.
  const shift = Math.max(0, bits(denominator) - bits(numerator) + 66);
  const scaled = numerator << BigInt(shift);
  const quotient = scaled / denominator;
  const sticky = scaled % denominator === 0n ? quotient : quotient | 1n;
  return Number(sticky) / 2 ** shift;
}

const SAFE = BigInt(Number.MAX_SAFE_INTEGER);

const bits = (value: bigint): number => value.toString(2).length;
