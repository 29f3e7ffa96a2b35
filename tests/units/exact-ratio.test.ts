import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactRatio } from '../../core/units/exact-ratio.ts';

const SEED = 20_310_523;

describe('exactRatio', () => {
  test('exactRatio(23 * 254, 160) is 1 7/16 in as the decimal 36.5125 is, though 23 / 16 * 25.4 may differ', () => {
    expect(exactRatio(23n * 254n, 160n)).toBe(36.5125);
    expect(exactRatio(-23n * 254n, 160n)).toBe(-36.5125);
    expect(exactRatio(0n, 7n)).toBe(0);
  });

  test('exactRatio(digits, 10^k) is what the same decimal is in the language', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: 10n ** 30n }), fc.nat(30), (digits, places) => {
        const text = `${digits}e-${places}`;
        expect(exactRatio(digits, 10n ** BigInt(places)), `read from ${text}`).toBe(Number(text));
      }),
      { seed: SEED, numRuns: 10_000 },
    );
  });
});
