/** Characters of a cell that a message repeats. */
const SHOWN = 60;

/**
 * What was read, in quotation marks that no inch mark looks like, for a message: cut when long, with unprintable characters spelled out.
 *
 * @example quoteText('top\u0007') // '“top\\u0007”'
 */
export const quoteText = (text: string): string => `“${shownText(text)}”`;

/** The same without quotation marks, for a field's name. */
export function shownText(text: string): string {
  // A character is two code units at most; the rest of a long text need not be looked at.
  const characters = Array.from(text.slice(0, 2 * SHOWN + 2));
  return printable(characters.length > SHOWN ? `${characters.slice(0, SHOWN).join('')}…` : text);
}

/** The whole text with unprintable characters and halves of surrogate pairs spelled out. */
export const printable = (text: string): string =>
  text.replace(/[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/gu, escaped);

const escaped = (character: string): string =>
  `\\u${(character.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`;
