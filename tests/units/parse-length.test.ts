import * as fc from 'fast-check';
import { Fraction } from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { parseLength, type LengthOptions } from '../../core/units/parse-length.ts';

const SEED = 20_310_520;

const mm = (text: string, options: LengthOptions = { unit: 'in' }): number => {
  const result = parseLength(text, options);
  if (!result.ok) throw new Error(`"${text}" was refused: ${result.reason}`);
  return result.mm;
};

const reason = (text: string, options: LengthOptions = { unit: 'in' }): string => {
  const result = parseLength(text, options);
  if (result.ok) throw new Error(`"${text}" was read as ${result.mm} mm`);
  return result.reason;
};

describe('parseLength reads lengths as people write them', () => {
  test.each([
    ['1 7/16', 36.5125],
    ['1-7/16"', 36.5125],
    ['1 - 7/16 in', 36.5125],
    ['1‑7⁄16″', 36.5125],
    ['1.4375 in', 36.5125],
    ['1,4375in', 36.5125],
    ['23/16', 36.5125],
    ['23 3/32', 586.58125],
    ['7/16', 11.1125],
    ['7 / 16 Inch', 11.1125],
    ['1½', 38.1],
    ['1-½"', 38.1],
    ['½', 12.7],
    ['1 ⁷⁄₁₆', 36.5125],
    ['⅞ INCHES', 22.225],
    ["3/4''", 19.05],
    ['3/4′′', 19.05],
    ['3/4”', 19.05],
    ['.5', 12.7],
    ['5.', 127],
    ['5. in.', 127],
    ['0,125', 3.175],
    ['1,25', 31.75],
    ['1250,125 mm', 1250.125],
    ['+1/2', 12.7],
    ['\u00a01\u20097/16\u00a0', 36.5125],
    ['1\t7/16\u202fin', 36.5125],
    ['36.5mm', 36.5],
    ['36,5 mm', 36.5],
    ['36.5 MM', 36.5],
    ['36.5 mm.', 36.5],
    ['36.5 millimetres', 36.5],
    ['36.5 millimeter', 36.5],
    ['3.65 cm', 36.5],
    ['3,65 Centimeters', 36.5],
    ['1/2 mm', 0.5],
    ['393 11/16', 9999.6625],
  ])('%j is %d mm', (text, expected) => {
    expect(mm(text)).toBe(expected);
  });

  test('a bare number has the unit that is asked for, a written unit wins', () => {
    expect(mm('36,5', { unit: 'mm' })).toBe(36.5);
    expect(mm('1 7/16 in', { unit: 'mm' })).toBe(36.5125);
    expect(mm('36.5 mm', { unit: 'in' })).toBe(36.5);
  });

  test('a minus sign is read where the sign may be any', () => {
    for (const text of ['-1 7/16', '−1 7/16"', '- 1-7/16', '–1.4375']) {
      expect(mm(text, { unit: 'in', sign: 'any' })).toBe(-36.5125);
    }
  });

  test('0 is read where it is allowed, and is never -0', () => {
    expect(mm('0', { unit: 'in', zero: true })).toBe(0);
    expect(mm('0/16', { unit: 'in', zero: true })).toBe(0);
    expect(mm('-0', { unit: 'in', sign: 'any' })).toBe(0);
  });
});

describe('parseLength refuses with a reason', () => {
  test.each([
    ['', 'nothing is written; write a length such as 1-7/16 in'],
    [' \u00a0 ', 'nothing is written; write a length such as 1-7/16 in'],
    ['in', 'there is no number before the unit; write a length such as 1-7/16 in'],
    ['"', 'there is no number before the unit; write a length such as 1-7/16 in'],
    ['1/0', 'the fraction has a denominator of 0; write one such as 7/16'],
    ['1 0/0', 'the fraction has a denominator of 0; write one such as 7/16'],
    ['1 23/16', 'the fraction 23/16 beside a whole number is not below 1; write 2-7/16'],
    ['1 16/16', 'the fraction 16/16 beside a whole number is not below 1; write 2'],
    ['1,250', 'the comma before three digits can mean thousands or decimals; write 1250 or 1.250'],
    ['1,250 mm', 'the comma before three digits can mean thousands or decimals; write 1250 or 1.250'],
    ['1,250.5', 'there are two decimal separators or a thousands separator; write 1250.5 or 1250,5'],
    ['1.250,5 mm', 'there are two decimal separators or a thousands separator; write 1250.5 or 1250,5'],
    ['1..5', 'there are two decimal separators or a thousands separator; write 1250.5 or 1250,5'],
    ['1e3', 'exponents are not read; write plain digits, such as 1250'],
    ['1.5E-3 in', 'exponents are not read; write plain digits, such as 1250'],
    ['1\' 6"', 'feet are not read; write the whole length in inches or millimetres'],
    ['5ft', 'feet are not read; write the whole length in inches or millimetres'],
    ['5 feet 2 in', 'feet are not read; write the whole length in inches or millimetres'],
    ['1.2 m', 'metres are not read; write millimetres or inches'],
    ['about 5', 'words are not read; write a number with in, mm or cm, such as 1-7/16 in'],
    ['5 yd', 'words are not read; write a number with in, mm or cm, such as 1-7/16 in'],
    ['5 min', 'words are not read; write a number with in, mm or cm, such as 1-7/16 in'],
    ['NaN', 'words are not read; write a number with in, mm or cm, such as 1-7/16 in'],
    ['0x10', 'words are not read; write a number with in, mm or cm, such as 1-7/16 in'],
    [
      '5 mm in',
      'there is more than one unit, or something after the unit; write one number and one unit, such as 36.5 mm',
    ],
    [
      '1" 5',
      'there is more than one unit, or something after the unit; write one number and one unit, such as 36.5 mm',
    ],
    [
      '5 mm )',
      'there is more than one unit, or something after the unit; write one number and one unit, such as 36.5 mm',
    ],
    ['5 )', 'this is not a number; write one such as 1-7/16, 1.4375 or 36,5'],
    ['--5', 'this is not a number; write one such as 1-7/16, 1.4375 or 36,5'],
    [
      'Mar-32',
      'this is a date, as spreadsheets make of fractions; write the unit behind the fraction, such as 3/32 in',
    ],
    ['1/2/3', 'there are two fraction bars, as in a date; write one fraction such as 7/16'],
    ['1.5/2', 'a decimal and a fraction are mixed; write 1-7/16 or 1.4375'],
    ['1.5 1/2', 'a decimal and a fraction are mixed; write 1-7/16 or 1.4375'],
    ['1 250', 'there is a space between digits; write 1250, or a fraction such as 1 7/16'],
    ['.', 'this is not a number; write one such as 1-7/16, 1.4375 or 36,5'],
    ['-1/2', 'the length is negative; write one above 0'],
    ['0', 'the length is 0; write one above 0'],
    ['0.000 mm', 'the length is 0; write one above 0'],
    ['10000.5 mm', 'the length is more than 10 m; write at most 10000 mm or 393-11/16 in'],
    ['394', 'the length is more than 10 m; write at most 10000 mm or 393-11/16 in'],
    ['9'.repeat(59), 'the length is more than 10 m; write at most 10000 mm or 393-11/16 in'],
    ['9'.repeat(61), 'this is too long for a length; write one such as 1-7/16 in'],
  ])('%j: %s', (text, expected) => {
    expect(reason(text)).toBe(expected);
  });

  test('a fraction without a unit is no millimetre, as it was most likely meant in inches', () => {
    expect(reason('7/16', { unit: 'mm' })).toBe(
      'a fraction without a unit stands where millimetres are read; write the unit, such as 7/16 in, or decimals, such as 11.1',
    );
  });

  test('a negative length, and 0 where the sign may be any but 0 may not', () => {
    expect(reason('-1', { unit: 'mm', zero: true })).toBe('the length is negative; write one of 0 or more');
    expect(reason('0', { unit: 'mm', sign: 'any', zero: false })).toBe(
      'the length is 0; write one that is not',
    );
    expect(reason('-10001', { unit: 'mm', sign: 'any' })).toContain('more than 10 m');
  });
});

const INCH_MARKS = ['', '"', ' "', '″', '”', "''", 'in', ' in.', ' Inch', ' INCHES', '\u00a0in'] as const;
const MM_MARKS = ['mm', ' mm', ' MM', '\u2009mm', ' millimetres'] as const;

/** A spelling of a number and the same number as fraction.js reads it. */
const numberSpelling = fc.oneof(
  fc.nat(390).map((whole) => ({ text: `${whole}`, value: new Fraction(whole) })),
  fc
    .record({
      whole: fc.nat(390),
      digits: fc.stringMatching(/^[0-9]{1,9}$/),
      separator: fc.constantFrom('.', ','),
    })
    .filter(({ whole, digits, separator }) => separator === '.' || whole === 0 || digits.length !== 3)
    .map(({ whole, digits, separator }) => ({
      text: `${whole}${separator}${digits}`,
      value: new Fraction(`${whole}.${digits}`),
    })),
  fc
    .record({
      whole: fc.nat(390),
      denominator: fc.constantFrom(2, 3, 4, 7, 8, 10, 16, 32, 64, 128, 1000, 9973),
      part: fc.nat(9999),
      joint: fc.constantFrom(' ', '-', '  ', ' - ', '\u00a0', '‑'),
      bar: fc.constantFrom('/', '⁄', ' / ', '∕'),
    })
    .map(({ whole, denominator, part, joint, bar }) => {
      const numerator = part % denominator;
      const fraction = `${numerator}${bar}${denominator}`;
      return {
        text: whole === 0 ? fraction : `${whole}${joint}${fraction}`,
        value: new Fraction(whole).add(new Fraction(numerator, denominator)),
      };
    }),
);

const spelling = fc.record({
  number: numberSpelling,
  sign: fc.constantFrom('', '-', '−', '+'),
  unit: fc.oneof(
    fc.constantFrom(...INCH_MARKS).map((mark) => ({ mark, size: new Fraction(127, 5) })),
    fc.constantFrom(...MM_MARKS).map((mark) => ({ mark, size: new Fraction(1) })),
    fc.constantFrom('cm', ' Cm').map((mark) => ({ mark, size: new Fraction(10) })),
  ),
  blanks: fc.constantFrom('', ' ', '\u00a0', '\t '),
});

/** A double as the very fraction that it is: fraction.js itself takes the nearest short one. */
function exactly(double: number): Fraction {
  let whole = double;
  let denominator = 1n;
  while (!Number.isInteger(whole)) {
    whole *= 2;
    denominator *= 2n;
  }
  return new Fraction(BigInt(whole), denominator);
}

describe('parseLength against fraction.js', () => {
  test('parseLength(any spelling) is the exact length, rounded once', () => {
    fc.assert(
      fc.property(spelling, ({ number, sign, unit, blanks }) => {
        const text = `${blanks}${sign}${number.text}${unit.mark}${blanks}`;
        const size = number.value.mul(unit.size);
        const expected = sign === '-' || sign === '−' ? size.neg() : size;
        // The bound holds for 10 m only.
        fc.pre(size.compare(10_000) <= 0);
        const read = mm(text, { unit: 'in', sign: 'any' });
        // The nearest double: no more than half of its last bit away.
        const off = exactly(read).sub(expected).abs();
        const lastBit = read === 0 ? 0 : 2 ** (Math.floor(Math.log2(Math.abs(read))) - 52);
        expect(off.mul(2).compare(exactly(lastBit)), `read from ${text}`).toBeLessThanOrEqual(0);
      }),
      { seed: SEED, numRuns: 20_000 },
    );
  });

  test('parseLength(any text) returns a finite length or a reason, and never throws', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 20 }), (text) => {
        const result = parseLength(text, { unit: 'in' });
        expect(result.ok ? Number.isFinite(result.mm) && result.mm > 0 : result.reason.length > 0).toBe(true);
      }),
      { seed: SEED, numRuns: 10_000 },
    );
  });

  test('parseLength(a jumble of length characters) is a length within bounds or a reason', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(...Array.from('0123456789/.,-" ½⁄mincft\'e+')), maxLength: 12 }),
        (text) => {
          const result = parseLength(text, { unit: 'mm', sign: 'any' });
          expect(result.ok ? Math.abs(result.mm) <= 10_000 : result.reason.length > 0).toBe(true);
        },
      ),
      {
        seed: SEED,
        numRuns: 20_000,
      },
    );
  });
});
