import type { LengthUnit } from './unit.ts';
import { INCH, mixedNumber, nearestInchFraction } from './inch-fraction.ts';
import { roundTo, SAME_OVERHANG, sameLength } from './tolerances.ts';

/**
 * A length in mm as people read it. Inches are a reduced fraction if the length is within 0.001 mm of
 * one (of 1/64, or else of 1/128), and otherwise four decimals, so that no fraction claims too much.
 * Millimetres have two decimals at most, three below 1 mm.
 *
 * @example formatLength(36.5125, 'in') // '1 7/16"'
 * @example formatLength(36.6, 'in') // '1.4409"'
 * @example formatLength(36.5, 'mm') // '36.5 mm'
 */
export function formatLength(
  mm: number,
  unit: LengthUnit,
  { denominator = 64 }: { readonly denominator?: number } = {},
): string {
  if (!Number.isFinite(mm)) throw new RangeError(`formatLength: not a length: ${mm}`);
  if (unit === 'mm') return `${roundTo(mm, Math.abs(mm) < 1 ? 3 : 2)} mm`;
  for (const parts of [denominator, 128]) {
    const fraction = nearestInchFraction(mm, parts);
    if (sameLength((fraction.units / fraction.denominator) * INCH, mm, SAME_OVERHANG)) {
      return `${mixedNumber(fraction.units, fraction.denominator, ' ')}"`;
    }
  }
  return `${roundTo(mm / INCH, 4).toFixed(4)}"`;
}
