import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatLength } from '../../core/units/format-length.ts';
import { parseLength } from '../../core/units/parse-length.ts';

const SEED = 20_310_522;

describe('formatLength', () => {
  test.each([
    [36.5125, 'in', '1 7/16"'],
    [36.5134, 'in', '1 7/16"'],
    [36.5136, 'in', '1.4375"'],
    [36.6, 'in', '1.4409"'],
    [38.1, 'in', '1 1/2"'],
    [25.4, 'in', '1"'],
    [2.38125, 'in', '3/32"'],
    [-2.38125, 'in', '-3/32"'],
    [-36.5125, 'in', '-1 7/16"'],
    [25.4 / 128, 'in', '1/128"'],
    [25.4 * (1 + 3 / 128), 'in', '1 3/128"'],
    [0, 'in', '0"'],
    [0.0004, 'in', '0"'],
    [-0.0004, 'in', '0"'],
    [36.5, 'mm', '36.5 mm'],
    [36.5125, 'mm', '36.51 mm'],
    [12, 'mm', '12 mm'],
    [0.125, 'mm', '0.125 mm'],
    [-0.0001, 'mm', '0 mm'],
    [-2.5, 'mm', '-2.5 mm'],
  ] as const)('formatLength(%d, %s) is %s', (mm, unit, expected) => {
    expect(formatLength(mm, unit)).toBe(expected);
  });

  test('formatLength(mm, in, { denominator: 16 }) shows no finer fraction than asked for but 1/128', () => {
    expect(formatLength(36.5125, 'in', { denominator: 16 })).toBe('1 7/16"');
    expect(formatLength(2.38125, 'in', { denominator: 16 })).toBe('3/32"');
  });

  test('formatLength(no number) is a programming error', () => {
    expect(() => formatLength(Number.NaN, 'mm')).toThrow(RangeError);
  });

  test('formatLength(x) reads back within half of its last decimal', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 9999, noNaN: true }),
        fc.constantFrom('in', 'mm'),
        (mm, unit) => {
          const text = formatLength(mm, unit);
          const read = parseLength(text, { unit: 'mm' });
          // Four decimals of an inch are 0.00254 mm, two of a millimetre 0.01 mm.
          const half = unit === 'in' ? 0.00254 / 2 : 0.01 / 2;
          expect(read.ok ? Math.abs(read.mm - mm) : Number.NaN, `read from ${text}`).toBeLessThanOrEqual(
            half + 1e-9,
          );
        },
      ),
      {
        seed: SEED,
        numRuns: 10_000,
      },
    );
  });
});
