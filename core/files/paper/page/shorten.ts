import type { TextWidth } from './types.ts';

/** The text, or as much of its start as fits into a width in mm with an ellipsis. */
export function shorten(text: string, width: number, size: number, measure: TextWidth, bold = false): string {
  if (measure(text, size, bold) <= width) return text;
  const letters = Array.from(text);
  const start = (count: number): string => `${letters.slice(0, count).join('').trimEnd()}…`;
  let [fits, tooMany] = [0, letters.length];
  while (tooMany - fits > 1) {
    const count = (fits + tooMany) >> 1;
    if (measure(start(count), size, bold) <= width) fits = count;
    else tooMany = count;
  }
  return start(fits);
}
