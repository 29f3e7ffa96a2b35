import * as fc from 'fast-check';
import { Fraction } from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { formatLength } from '../../core/units/format-length.ts';
import { parseLength, type LengthOptions } from '../../core/units/parse-length.ts';
import { sumLength } from '../../core/units/sum-length.ts';

const SEED = 20_310_602;

const mm = (text: string, options: LengthOptions = { unit: 'in' }): number => {
  const result = sumLength(text, options);
  if (!result.ok) throw new Error(`"${text}" was refused: ${result.reason}`);
  return result.mm;
};

const reason = (text: string, options: LengthOptions = { unit: 'in' }): string => {
  const result = sumLength(text, options);
  if (result.ok) throw new Error(`"${text}" was read as ${result.mm} mm`);
  return result.reason;
};

describe('sumLength', () => {
  test.each([
    ['18 + 3/8', 'in', 466.725],
    ['1 7/16 - 1/16', 'in', 34.925],
    ['36.5mm + 1/8in', 'in', 39.675],
    ['36.5mm + 1/8in', 'mm', 39.675],
    ['3 * 1 1/2', 'in', 114.3],
    ['1 1/2 × 3', 'in', 114.3],
    ['18 / 2', 'in', 228.6],
    ['18 / 2', 'mm', 9],
    ['18 ÷ 2', 'mm', 9],
    ['36 * 1/2', 'mm', 18],
    ['450 - 2 * 12,7', 'mm', 424.6],
    ['18" - 2 * 1 7/16"', 'in', 384.175],
    ['2 * 1 7/16" + 1"', 'mm', 98.425],
    ['18 - 1 - 1', 'in', 406.4],
    ['18 / 3 / 2', 'in', 76.2],
    ['18 / 3 * 2', 'in', 304.8],
    ['10 - 4 / 2', 'mm', 8],
    ['½ + ¼', 'in', 19.05],
    ['1½ – 1⁄4″', 'in', 31.75],
    ['15 3/4 + -1/4', 'in', 393.7],
    ['1/3 in * 3', 'mm', 25.4],
    ['  18   +\t3/8  ', 'in', 466.725],
  ] as const)('%j with bare %s is %d mm', (text, unit, expected) => {
    expect(mm(text, { unit })).toBe(expected);
  });

  test.each([
    ['1-7/16', 36.5125],
    ['1 7/16', 36.5125],
    ['7/16', 11.1125],
    ['7 / 16 in', 11.1125],
    ['18 / 2 in', 228.6],
    ['7 /16 in', 11.1125],
    ['7 / 16"', 11.1125],
    ['1 7 / 16', 36.5125],
    ['36,5 mm', 36.5],
    ['- 1 7/16', -36.5125],
    ['0', 0],
  ])('%j is one length, as parseLength reads it', (text, expected) => {
    expect(mm(text, { unit: 'in', sign: 'any' })).toBe(expected);
    expect(parseLength(text, { unit: 'in', sign: 'any' })).toEqual({ ok: true, mm: expected });
  });

  test('a minus between blanks takes away, a hyphen without them joins a mixed number', () => {
    expect(mm('1 - 7/16')).toBe(14.2875);
    expect(mm('1-7/16')).toBe(36.5125);
    expect(mm('3 - 1-7/16')).toBe(39.6875);
  });
});

describe('sumLength says what is wrong and what is accepted', () => {
  test.each([
    ['', 'in', /^nothing is written; write a length such as 1-7\/16 in$/],
    ['18 +', 'in', /^nothing is written after \+; write a length there$/],
    ['18 -', 'mm', /^nothing is written after -; write a length there$/],
    ['* 3', 'in', /^nothing is written before \*/],
    ['/ 3', 'in', /^nothing is written before \//],
    ['18 + * 3', 'in', /^two signs follow each other, \+ \*; write one$/],
    ['18 * / 3', 'in', /^two signs follow each other, \* \/; write one$/],
    ['(18 + 2) / 2', 'in', /^brackets are not read; write the sum without them$/],
    ['18+3/8', 'in', /^put a blank before and after \+, such as 18 \+ 2$/],
    ['18 +3/8', 'in', /^put a blank before and after \+/],
    ['18+ 3/8', 'in', /^put a blank before and after \+/],
    ['3*2', 'mm', /^put a blank before and after \*, such as 18 \* 2$/],
    ['18 -3/8', 'in', /^put a blank before and after -/],
    ['18- 3/8', 'in', /^put a blank before and after -, such as 18 - 2$/],
    ['18 + - * 3', 'in', /^two signs follow each other, - \*; write one$/],
    ['18 + -', 'in', /^nothing is written after -; write a length there$/],
    ['18 / 0', 'in', /^nothing can be divided by 0; write another number$/],
    ['36 mm / 2 in', 'mm', /^2 in divides; divide by a number without a unit$/],
    ['2 in * 3 in', 'in', /^two lengths are multiplied; leave the unit of one of them out$/],
    ['18 + 3 mm', 'in', /^a number without a unit stands beside one in mm; write the unit of each/],
    ['18 + 3/8 in', 'mm', /^a number without a unit stands beside one in in/],
    ['1/2 * 1/4', 'mm', /^a fraction without a unit stands where millimetres are read/],
    ['18 + 1/2', 'mm', /^a fraction without a unit stands where millimetres are read/],
    ['18 + wide', 'in', /^words are not read/],
    ['18 + 1 23/16', 'in', /^the fraction 23\/16 beside a whole number is not below 1; write 2-7\/16$/],
    ['18 - 19', 'in', /^the length is negative; write one above 0$/],
    ['18 - 18', 'in', /^the length is 0; write one above 0$/],
    ['300 * 300', 'mm', /^the length is more than 10 m/],
    [`1${' + 1'.repeat(80)}`, 'in', /^this is too long/],
    ['18 + 1e3', 'in', /^exponents are not read/],
    ["6' + 2", 'in', /^feet are not read/],
  ] as const)('%j with bare %s', (text, unit, expected) => {
    expect(reason(text, { unit })).toMatch(expected);
  });
});

/** An operand as people type it, with its exact value in its unit. */
const operand = fc.oneof(
  fc
    .record({
      whole: fc.nat({ max: 40 }),
      top: fc.integer({ min: 1, max: 15 }),
      joint: fc.constantFrom(' ', '-'),
    })
    .map(({ whole, top, joint }) => ({
      text: whole === 0 ? `${top}/16` : `${whole}${joint}${top}/16`,
      value: new Fraction(16 * whole + top, 16),
      fraction: true,
    })),
  fc.integer({ min: 1, max: 9999 }).map((tenths) => ({
    text: String(tenths / 10),
    value: new Fraction(tenths, 10),
    fraction: false,
  })),
);

const IN_MM = { in: new Fraction(254, 10), mm: new Fraction(1), '': new Fraction(1) };

/** A length with its unit, times and divided by plain numbers. */
const term = (unit: 'in' | 'mm') =>
  fc
    .record({
      length: operand,
      factors: fc.array(fc.record({ sign: fc.constantFrom('*', '/'), by: operand }), { maxLength: 2 }),
    })
    .map(({ length, factors }) => ({
      text: [`${length.text} ${unit}`, ...factors.map(({ sign, by }) => `${sign} ${by.text}`)].join(' '),
      value: factors.reduce(
        (value, { sign, by }) => (sign === '*' ? value.mul(by.value) : value.div(by.value)),
        length.value.mul(IN_MM[unit]),
      ),
    }));

const sum = fc
  .record({
    first: fc.constantFrom('in' as const, 'mm' as const).chain(term),
    rest: fc.array(
      fc.record({
        sign: fc.constantFrom('+', '-'),
        term: fc.constantFrom('in' as const, 'mm' as const).chain(term),
      }),
      { maxLength: 3 },
    ),
  })
  .map(({ first, rest }) => ({
    text: [first.text, ...rest.map(({ sign, term }) => `${sign} ${term.text}`)].join(' '),
    value: rest.reduce(
      (value, { sign, term }) => (sign === '+' ? value.add(term.value) : value.sub(term.value)),
      first.value,
    ),
  }))
  .filter(({ text, value }) => text.length <= 200 && Math.abs(value.valueOf()) <= 10_000);

describe('sumLength against exact fractions', () => {
  test('sumLength(sum) is the fraction to the last bit', () => {
    fc.assert(
      fc.property(sum, fc.constantFrom('in' as const, 'mm' as const), ({ text, value }, unit) => {
        expect(mm(text, { unit, sign: 'any' })).toBe(nearest(value));
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });

  test('sumLength(a length that parseLength reads) is the same, whatever its form', () => {
    const form = fc.record({
      operand,
      unit: fc.constantFrom('', ' in', '"', ' mm', 'mm', ' cm'),
      sign: fc.constantFrom('', '-', '- ', '+'),
      bare: fc.constantFrom('in' as const, 'mm' as const),
    });
    fc.assert(
      fc.property(form, ({ operand: { text }, unit, sign, bare }) => {
        const written = `${sign}${text}${unit}`;
        const options = { unit: bare, sign: 'any' } as const;
        expect(sumLength(written, options)).toEqual(parseLength(written, options));
      }),
      { seed: SEED + 1, numRuns: 1000 },
    );
  });

  test('sumLength(any text) answers', () => {
    const piece = fc.constantFrom(
      ...Array.from('0123456789 +-*/.,()mincmft"\'½×'),
      ' + ',
      ' - ',
      ' / ',
      ' * ',
      '1 7/16',
      'mm',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 14 }), (pieces) => {
        const result = sumLength(pieces.join(''), { unit: 'in', sign: 'any' });
        expect(result.ok ? Number.isFinite(result.mm) : result.reason.length > 10).toBe(true);
        expect(result.ok ? formatLength(result.mm, 'in') : 'x').not.toBe('');
      }),
      { seed: SEED + 2, numRuns: 2000 },
    );
  });
});

/** The number nearest to a fraction: dividing big whole numbers once rounds once. */
function nearest(value: Fraction): number {
  const { n, d, s } = value;
  // Decimal text of 40 digits is read back to the nearest number.
  const scale = 10n ** 40n;
  const digits = ((n * scale) / d).toString().padStart(41, '0');
  return Number(s) * Number(`${digits.slice(0, -40)}.${digits.slice(-40)}`);
}
