import type { TextWidth } from './types.ts';

/** A space, but none within a length: neither `1 7/16"` nor `36.5 mm` may come apart. */
const BREAK = / (?!mm\b|\d+\/\d)/;

/** The lines of a text in a width in mm, broken at spaces; a word that is wider than that has a line of its own. */
export function wrap(
  text: string,
  width: number,
  size: number,
  measure: TextWidth,
  bold = false,
): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(BREAK)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && measure(longer, size, bold) > width) {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  return [...lines, line];
}
