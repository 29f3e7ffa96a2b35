import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bulgeNumber, coordinate, fixedDecimal } from '../../core/files/numbers.ts';

const SEED = 31;

describe('fixedDecimal', () => {
  test('DXF-2: writes no exponent and no negative zero', () => {
    expect(coordinate(1e-7)).toBe('0.000000');
    expect(coordinate(-1e-7)).toBe('0.000000');
    expect(coordinate(-0)).toBe('0.000000');
    expect(coordinate(1e14)).toBe('100000000000000.000000');
    expect(coordinate(-12.3456785)).toMatch(/^-12\.34567[89]$/);
    expect(bulgeNumber(Math.SQRT2 - 1)).toBe('0.414213562');
  });

  test(`DXF-2: of any number within ±1e9, seed ${SEED}, is it to half of the last place`, () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e9, max: 1e9, noNaN: true }),
        fc.constantFrom(6, 9),
        (value, decimals) => {
          const text = fixedDecimal(value, decimals);
          expect(text).toMatch(decimals === 6 ? /^-?\d+\.\d{6}$/ : /^-?\d+\.\d{9}$/);
          expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(
            0.5 * 10 ** -decimals + Math.abs(value) * 1e-15,
          );
        },
      ),
      { seed: SEED, numRuns: 2000 },
    );
  });

  test('throws for what no drawing that was checked can hold', () => {
    for (const value of [Number.NaN, Infinity, -Infinity, 1e21])
      expect(() => coordinate(value)).toThrow(RangeError);
  });
});
