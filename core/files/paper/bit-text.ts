import { bitSizes } from '../../units/bit-sizes.ts';
import type { LengthUnit } from '../../units/unit.ts';
import type { PaperWords } from './words/en.ts';

/**
 * A bit as a shop asks for it.
 *
 * @example bitText(5, 'in', EN) // '5 mm, or 13/64"'
 */
export function bitText(mm: number, unit: LengthUnit, words: PaperWords): string {
  const [size, near] = bitSizes(mm, unit);
  return near === undefined ? size : words.bitOr(size, near);
}
