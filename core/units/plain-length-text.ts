/** Fractions that are one character, as `numerator/denominator`. */
const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅐': '1/7',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅑': '1/9',
  '⅒': '1/10',
};

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';

const digits = (text: string, alphabet: string): string =>
  Array.from(text, (character) => alphabet.indexOf(character)).join('');

/**
 * The same length in plain characters: one kind of space, slash, hyphen, minus, prime and inch mark.
 *
 * @example plainLengthText('1½″') // '1 1/2"'
 */
export function plainLengthText(text: string): string {
  return text
    .replace(/[\s\u200b\u2060\ufeff]+/g, ' ')
    .replace(/[\u2044\u2215\uff0f]/g, '/')
    .replace(
      /(?<![⁰¹²³⁴-⁹])([⁰¹²³⁴-⁹]+) ?\/ ?([₀-₉]+)/g,
      (_, top: string, under: string) => ` ${digits(top, RAISED)}/${digits(under, LOWERED)}`,
    )
    .replace(/[½⅓⅔¼¾⅕-⅞⅐⅑⅒]/g, (character) => ` ${VULGAR[character] ?? character}`)
    .replace(/[\u2010-\u2015\u2212\ufe63\uff0d]/g, '-')
    .replace(/[\u2032\u2018\u2019\u02b9\u02bc\u00b4`\uff07]/g, "'")
    .replace(/[\u2033\u201c\u201d\u02ba\u3003\uff02]|''/g, '"')
    .replace(/ +/g, ' ')
    .trim();
}
