import { formatLength } from './format-length.ts';
import type { LengthUnit } from './unit.ts';

/**
 * A width and a height in mm as people read them; millimetres are named once.
 *
 * @example formatSize(444.5, 149.225, 'in') // '17 1/2" × 5 7/8"'
 * @example formatSize(444.5, 149.225, 'mm') // '444.5 × 149.23 mm'
 */
export const formatSize = (width: number, height: number, unit: LengthUnit): string =>
  `${formatLength(width, unit).replace(/ mm$/, '')} × ${formatLength(height, unit)}`;
