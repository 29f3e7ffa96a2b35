import type { LengthUnit } from '../../../units/unit.ts';
import { formatSize } from '../../../units/format-size.ts';
import type { PaperWords } from '../words/en.ts';
import type { PaperSettings } from './settings.ts';

/** What people call a sheet: its name, or its size where it has none. */
export function sheetText({ sheet }: PaperSettings, unit: LengthUnit, { sheetNames }: PaperWords): string {
  if (sheet === 'A4 or letter') return sheetNames.either;
  if (sheet === 'as long as needed') return sheetNames.long;
  return typeof sheet === 'string' ? sheet : formatSize(sheet.width, sheet.height, unit);
}
