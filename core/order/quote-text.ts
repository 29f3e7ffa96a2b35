/** Characters of a cell that a message repeats. */
const SHOWN = 60;

/**
 * What was read, in quotation marks that no inch mark looks like, for a message: cut when long, with unprintable characters spelled out.
 *
 * @example quoteText('top\u0007') // '“top\\u0007”'
 */
export function quoteText(text: string): string {
  const characters = Array.from(text);
  const shown = characters.length > SHOWN ? `${characters.slice(0, SHOWN).join('')}…` : text;
  return `“${shown.replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, escaped)}”`;
}

const escaped = (character: string): string =>
  `\\u${(character.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`;
