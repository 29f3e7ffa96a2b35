import type { TextWidth } from './types.ts';

/** The text, or as much of its start as fits into a width in mm with an ellipsis. */
export function shorten(text: string, width: number, size: number, measure: TextWidth, bold = false): string {
  if (measure(text, size, bold) <= width) return text;
  const letters = Array.from(text);
  while (letters.length > 0 && measure(`${letters.join('').trimEnd()}…`, size, bold) > width) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}
