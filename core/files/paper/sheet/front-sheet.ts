import type { PaperSettings } from './settings.ts';
import { SHEET_SIZES, type SheetSize } from './sheet-sizes.ts';

/** The sheet for covers and lists: the shop's own, held upright, or A4 or letter where pages have no fixed size. */
export function frontSheet({ sheet }: PaperSettings): SheetSize {
  if (sheet === 'as long as needed') return SHEET_SIZES['A4 or letter'];
  const { width, height } = typeof sheet === 'string' ? SHEET_SIZES[sheet] : sheet;
  return { width: Math.min(width, height), height: Math.max(width, height) };
}
