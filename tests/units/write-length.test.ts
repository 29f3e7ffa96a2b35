import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseLength } from '../../core/units/parse-length.ts';
import { writeLength } from '../../core/units/write-length.ts';

const SEED = 20_310_521;

const lengths = fc.oneof(
  fc.integer({ min: -50_000, max: 50_000 }).map((parts) => (parts / 128) * 25.4),
  fc.integer({ min: -1_000_000, max: 1_000_000 }).map((parts) => parts / 100),
  fc.double({ min: -10_000, max: 10_000, noNaN: true }),
);

describe('writeLength', () => {
  test.each([
    [38.1, 'in', '1-1/2 in'],
    [2.38125, 'in', '3/32 in'],
    [-2.38125, 'in', '-3/32 in'],
    [25.4, 'in', '1 in'],
    [0, 'in', '0 in'],
    [-0, 'in', '0 in'],
    [2.54, 'in', '0.1 in'],
    [0.0254, 'in', '0.001 in'],
    [36.5, 'in', '36.5 mm'],
    [0.125, 'in', '0.125 mm'],
    [36.5125, 'mm', '36.5125 mm'],
    [0, 'mm', '0 mm'],
    [-0, 'mm', '0 mm'],
    [1e-7, 'mm', '0.0000001 mm'],
    [-1.25e-9, 'mm', '-0.00000000125 mm'],
    [-1e-13, 'in', '0 in'],
  ] as const)('writeLength(%d, %s) is %s', (mm, unit, expected) => {
    expect(writeLength(mm, unit)).toBe(expected);
  });

  test('writeLength(no number) is a programming error', () => {
    expect(() => writeLength(Number.NaN, 'in')).toThrow(RangeError);
    expect(() => writeLength(Number.POSITIVE_INFINITY, 'mm')).toThrow(RangeError);
  });

  test('parseLength(writeLength(x)) is x to the last bit, whatever unit bare numbers have', () => {
    fc.assert(
      fc.property(lengths, fc.constantFrom('in', 'mm'), fc.constantFrom('in', 'mm'), (mm, unit, bare) => {
        const text = writeLength(mm, unit);
        const read = parseLength(text, { unit: bare, sign: 'any' });
        expect(read, `read from ${text}`).toEqual({ ok: true, mm: Math.abs(mm) < 1e-12 ? 0 : mm });
      }),
      {
        seed: SEED,
        numRuns: 20_000,
      },
    );
  });
});
