import { formatLength } from './format-length.ts';
import { nearestInchFraction, INCH } from './inch-fraction.ts';
import { SAME_OVERHANG, sameLength } from './tolerances.ts';
import type { LengthUnit } from './unit.ts';

/**
 * A bit's diameter as a shop asks for it: a millimetre size is named as such in an inch shop too, followed by the
 * nearest 1/64 in.
 *
 *     bitSizes(5, 'in')  // ['5 mm', '13/64"']
 */
export function bitSizes(mm: number, unit: LengthUnit): readonly [string, ...string[]] {
  if (unit === 'mm') return [formatLength(mm, 'mm')];
  const { units, denominator } = nearestInchFraction(mm, 64);
  const near = (units / denominator) * INCH;
  const inches = formatLength(near, 'in');
  return sameLength(near, mm, SAME_OVERHANG) ? [inches] : [formatLength(mm, 'mm'), inches];
}
