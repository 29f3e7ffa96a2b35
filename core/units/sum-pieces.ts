import type { Refusal } from './parse-number.ts';

export type Operator = '+' | '-' | '*' | '/';

/** An operand of a sum as text, and the operator before it; the first one has `+`. */
export interface SumPiece {
  readonly operator: Operator;
  readonly text: string;
}

const refuse = (reason: string): Refusal => ({ ok: false, reason });

const isOperator = (word: string): word is Operator => /^[-+*/]$/.test(word);

/** A whole number with a unit, as the lower part of a fraction has: `16 in`. */
const WITH_UNIT = /^\d+ ?[a-z"]/i;

/**
 * Cuts a sum in plain characters at its operators, which stand between spaces: `1-7/16` is one operand.
 *
 * @example sumPieces('18 + 3/8') // [{ operator: '+', text: '18' }, { operator: '+', text: '3/8' }]
 */
export function sumPieces(
  plain: string,
): { readonly ok: true; readonly pieces: readonly SumPiece[] } | Refusal {
  if (/[()[\]{}]/.test(plain)) return refuse('brackets are not read; write the sum without them');
  const pieces: SumPiece[] = [];
  let operator: Operator = '+';
  let words: string[] = [];
  for (const word of plain.split(' ')) {
    const begun = words.some((own) => !isOperator(own));
    if (!isOperator(word)) {
      words.push(word);
    } else if (begun) {
      pieces.push({ operator, text: words.join(' ') });
      [operator, words] = [word, []];
    } else if (word === '*' || word === '/') {
      const before = words.at(-1) ?? (pieces.length === 0 ? undefined : operator);
      return refuse(
        before === undefined
          ? `nothing is written before ${word}; write a length there`
          : `two signs follow each other, ${before} ${word}; write one`,
      );
    } else {
      // A sign of the number that follows, as in `- 1/16`.
      words.push(word);
    }
  }
  if (words.every(isOperator)) {
    return refuse(`nothing is written after ${words.at(-1) ?? operator}; write a length there`);
  }
  const all = joinFractions([...pieces, { operator, text: words.join(' ') }]);
  const tight = all.map(({ text }) => tightOperator(text)).find((found) => found !== undefined);
  if (tight !== undefined) return refuse(`put a blank before and after ${tight}, such as 18 ${tight} 2`);
  return { ok: true, pieces: all };
}

/** `7 / 16 in` and `1 7 / 16` are fractions with blanks in them, as a single length may have. */
function joinFractions(pieces: readonly SumPiece[]): readonly SumPiece[] {
  const joined: SumPiece[] = [];
  for (const piece of pieces) {
    const above = joined.at(-1);
    const isFraction =
      piece.operator === '/' &&
      above !== undefined &&
      above.operator !== '/' &&
      ((/^[-+]? ?\d+ \d+$/.test(above.text) && /^\d+(?![.,\d])/.test(piece.text)) ||
        (/^[-+]? ?\d+$/.test(above.text) && WITH_UNIT.test(piece.text)));
    if (isFraction) joined.splice(-1, 1, { ...above, text: `${above.text}/${piece.text}` });
    else joined.push(piece);
  }
  return joined;
}

/** An operator inside an operand: `18+3`, and `18 -3/8`, which some mean as 18-3/8 and others as a sum. */
const tightOperator = (text: string): string | undefined =>
  /[^-+ ] ?([+*])/.exec(text)?.[1] ?? /\d(?: (-)\S|(-) )/.exec(text)?.slice(1).find(Boolean);
