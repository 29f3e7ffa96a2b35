import type { LengthUnit } from '../../../units/unit.ts';
import { formatSize } from '../../../units/format-size.ts';
import type { PaperSettings } from './settings.ts';

/** What people call a sheet: its name, or its size where it has none. */
export const sheetText = ({ sheet }: PaperSettings, unit: LengthUnit): string =>
  typeof sheet === 'string' ? sheet : formatSize(sheet.width, sheet.height, unit);
