import { exactRatio } from './exact-ratio.ts';
import {
  BARE_FRACTION,
  lengthInRange,
  parseLength,
  readLength,
  TENTHS,
  type LengthOptions,
  type LengthResult,
  type WrittenLength,
} from './parse-length.ts';
import type { Refusal } from './parse-number.ts';
import { plainLengthText } from './plain-length-text.ts';
import { sumPieces, type SumPiece } from './sum-pieces.ts';
import type { LengthUnit } from './unit.ts';

/** Characters. A longer text is no sum that anybody types into a field. */
const LONGEST_SUM = 200;

const refuse = (reason: string): Refusal => ({ ok: false, reason });

/**
 * Reads what a length field accepts: one length as `parseLength` reads it, or a plain sum of them whose
 * operators stand between blanks, left to right, * and / before + and -. Returns millimetres, exact to one
 * rounding.
 *
 * @example sumLength('18 + 3/8', { unit: 'in' }) // { ok: true, mm: 466.725 }
 * @example sumLength('3 * 1 1/2', { unit: 'in' }) // { ok: true, mm: 114.3 }
 * @example sumLength('1-7/16', { unit: 'in' }) // { ok: true, mm: 36.5125 }
 */
export function sumLength(text: string, options: LengthOptions): LengthResult {
  const plain = plainLengthText(text.replace(/[×∗⋅·]/g, '*').replace(/÷/g, '/'));
  if (plain === '') return parseLength(plain, options);
  if (plain.length > LONGEST_SUM) return refuse(`this is too long; write ${LONGEST_SUM} characters at most`);
  const cut = sumPieces(plain);
  if (!cut.ok) return cut;
  const terms: WrittenLength[] = [];
  for (const factors of termsOf(cut.pieces)) {
    const term = product(factors, options.unit);
    if (!term.ok) return term;
    terms.push(term);
  }
  const unclear = unclearUnit(terms, options.unit);
  if (unclear !== undefined) return refuse(unclear);
  let [numerator, denominator] = [0n, 1n];
  for (const term of terms) {
    numerator =
      numerator * term.denominator + term.numerator * TENTHS[term.unit ?? options.unit] * denominator;
    denominator *= term.denominator;
  }
  return lengthInRange(exactRatio(numerator, denominator * 10n), options);
}

/** The products that are added: each begins with its + or -. */
function termsOf(pieces: readonly SumPiece[]): readonly (readonly SumPiece[])[] {
  const terms: SumPiece[][] = [];
  for (const piece of pieces) {
    if (piece.operator === '+' || piece.operator === '-') terms.push([piece]);
    else terms.at(-1)?.push(piece);
  }
  return terms;
}

/** Numbers multiplied and divided, of which one at most has a unit. */
function product(factors: readonly SumPiece[], bareUnit: LengthUnit): WrittenLength | Refusal {
  let [numerator, denominator] = [1n, 1n];
  let unit: WrittenLength['unit'] = null;
  let fraction = true;
  for (const { operator, text } of factors) {
    const read = readLength(text, bareUnit);
    if (!read.ok) return read;
    if (operator === '/') {
      if (read.unit !== null) return refuse(`${text} divides; divide by a number without a unit`);
      if (read.numerator === 0n) return refuse('nothing can be divided by 0; write another number');
      const sign = read.numerator < 0n ? -1n : 1n;
      numerator *= sign * read.denominator;
      denominator *= sign * read.numerator;
      continue;
    }
    if (read.unit !== null && unit !== null) {
      return refuse('two lengths are multiplied; leave the unit of one of them out');
    }
    unit ??= read.unit;
    fraction &&= read.fraction;
    numerator *= operator === '-' ? -read.numerator : read.numerator;
    denominator *= read.denominator;
  }
  if (fraction && unit === null && bareUnit === 'mm') return refuse(BARE_FRACTION);
  return { ok: true, numerator, denominator, unit, fraction };
}

/** `18 + 3 mm` where inches are read may mean 18 in or 18 mm: nobody guesses. */
function unclearUnit(terms: readonly WrittenLength[], bareUnit: LengthUnit): string | undefined {
  const other = terms.find(({ unit }) => unit !== null && unit !== bareUnit)?.unit;
  if (other === undefined || other === null || terms.every(({ unit }) => unit !== null)) return undefined;
  const example = bareUnit === 'in' ? '18 in + 9.5 mm' : '450 mm + 3/8 in';
  return `a number without a unit stands beside one in ${other}; write the unit of each, such as ${example}`;
}
