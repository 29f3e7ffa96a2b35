import type { LengthUnit } from './unit.ts';
import { exactRatio } from './exact-ratio.ts';
import { parseNumber, type Refusal } from './parse-number.ts';
import { plainLengthText } from './plain-length-text.ts';

export type LengthResult = { readonly ok: true; readonly mm: number } | Refusal;

export interface LengthOptions {
  /** Unit of a number without one. */
  readonly unit: LengthUnit;
  /** `positive` (the default) refuses a minus sign. */
  readonly sign?: 'positive' | 'any';
  /** Whether 0 is a length; by default only where negative lengths are. */
  readonly zero?: boolean;
}

/** mm. A drawer front, cabinet or sheet is far smaller: a larger number is a slip of the hand. */
export const LARGEST_LENGTH = 10_000;

/** Characters. Longer text is no length; keeps exact arithmetic small. */
const LONGEST_TEXT = 60;

const UNIT = /^(.*?) ?(?<!\p{L})(millimet(?:er|re)s?|mm|centimet(?:er|re)s?|cm|inch(?:es)?|in|")( ?\.)?$/iu;
const ANY_UNIT =
  /(?<!\p{L})(?:millimet(?:er|re)s?|mm|centimet(?:er|re)s?|cm|inch(?:es)?|in|met(?:er|re)s?|m)(?!\p{L})|"/iu;

/** Tenths of a millimetre in one unit: whole numbers, so that a length is rounded once. */
export const TENTHS = { in: 254n, mm: 10n, cm: 100n } as const;

/** `15-Mar`, `Mar-32`: what spreadsheets make of 3/15 and 3/32. */
const DATE =
  /^(?:\d{1,4}[-/. ])?(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*(?:[-/. ]\d{1,4})?$/i;

const EXAMPLE = { in: '1-7/16 in', mm: '36.5 mm' } as const;

const refuse = (reason: string): Refusal => ({ ok: false, reason });

/** A length as it was written, exact: `numerator / denominator` of its unit, or of no unit. */
export interface WrittenLength {
  readonly ok: true;
  /** Below 0 when a minus sign stands before it. */
  readonly numerator: bigint;
  readonly denominator: bigint;
  /** Null for a bare number. */
  readonly unit: keyof typeof TENTHS | null;
  /** Whether it was written with a slash. */
  readonly fraction: boolean;
}

/**
 * Reads a length as people write it and returns millimetres, exact to one rounding.
 *
 * @example parseLength('1 7/16"', { unit: 'mm' }) // { ok: true, mm: 36.5125 }
 * @example parseLength('36,5', { unit: 'mm' }) // { ok: true, mm: 36.5 }
 */
export function parseLength(text: string, options: LengthOptions): LengthResult {
  const { unit: bareUnit } = options;
  const written = readLength(plainLengthText(text), bareUnit);
  if (!written.ok) return written;
  const { numerator, denominator, unit, fraction } = written;
  if (fraction && unit === null && bareUnit === 'mm') return refuse(BARE_FRACTION);
  return lengthInRange(exactRatio(numerator * TENTHS[unit ?? bareUnit], denominator * 10n), options);
}

export const BARE_FRACTION =
  'a fraction without a unit stands where millimetres are read; write the unit, such as 7/16 in, or decimals, such as 11.1';

/** Reads one length in plain characters, of any size and sign. */
export function readLength(plain: string, bareUnit: LengthUnit): WrittenLength | Refusal {
  if (plain === '') return refuse(`nothing is written; write a length such as ${EXAMPLE[bareUnit]}`);
  if (plain.length > LONGEST_TEXT) {
    return refuse(`this is too long for a length; write one such as ${EXAMPLE[bareUnit]}`);
  }
  const [, before, unitText] = UNIT.exec(plain) ?? [];
  const body = before ?? plain;
  const reason = notOneNumber(body, unitText, bareUnit);
  if (reason !== undefined) return refuse(reason);

  const [, mark = '', digits = ''] = /^([-+]?) ?(.*)$/.exec(body) ?? [];
  const number = parseNumber(digits);
  if (!number.ok) return number;
  return {
    ...number,
    numerator: mark === '-' ? -number.numerator : number.numerator,
    unit: unitText === undefined ? null : unitOf(unitText),
  };
}

const unitOf = (text: string): keyof typeof TENTHS =>
  /^m/i.test(text) ? 'mm' : /^c/i.test(text) ? 'cm' : 'in';

function notOneNumber(body: string, unitText: string | undefined, bareUnit: LengthUnit): string | undefined {
  if (body === '') return `there is no number before the unit; write a length such as ${EXAMPLE[bareUnit]}`;
  if (/'|(?<!\p{L})(?:ft|foot|feet)(?!\p{L})/iu.test(body)) {
    return 'feet are not read; write the whole length in inches or millimetres';
  }
  if (/^[-+]? ?[\d.,]+ ?e ?[-+]?\d+$/i.test(body)) {
    return 'exponents are not read; write plain digits, such as 1250';
  }
  if (ANY_UNIT.test(body)) {
    return unitText === undefined && /\d ?m(?:et(?:er|re)s?)?$/i.test(body)
      ? 'metres are not read; write millimetres or inches'
      : 'there is more than one unit, or something after the unit; write one number and one unit, such as 36.5 mm';
  }
  if (DATE.test(body)) {
    return 'this is a date, as spreadsheets make of fractions; write the unit behind the fraction, such as 3/32 in';
  }
  if (/\p{L}/u.test(body)) {
    return `words are not read; write a number with in, mm or cm, such as ${EXAMPLE[bareUnit]}`;
  }
  return undefined;
}

/** A length in mm, or the reason that it is not one that the options accept. */
export function lengthInRange(
  mm: number,
  { sign = 'positive', zero = sign === 'any' }: LengthOptions,
): LengthResult {
  const least = zero ? 'of 0 or more' : 'above 0';
  if (mm < 0 && sign === 'positive') return refuse(`the length is negative; write one ${least}`);
  if (mm === 0 && !zero) {
    return refuse(
      sign === 'any' ? 'the length is 0; write one that is not' : `the length is 0; write one ${least}`,
    );
  }
  if (Math.abs(mm) > LARGEST_LENGTH) {
    return refuse('the length is more than 10 m; write at most 10000 mm or 393-11/16 in');
  }
  return { ok: true, mm };
}
