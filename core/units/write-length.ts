import type { LengthUnit } from './unit.ts';
import { exactRatio } from './exact-ratio.ts';
import { plainDecimal } from './plain-decimal.ts';
import { INCH, mixedNumber, nearestInchFraction } from './inch-fraction.ts';

/** mm. A smaller length is nothing but rounding noise, far below an atom, and is written as 0. */
const NOISE = 1e-12;

/**
 * A length in mm as exact text for documents, always with its unit: `parseLength` reads back the very
 * same number (0 for less than 1e-12 mm). Inches are a fraction where one is exact, else decimals; a length that has no short text
 * in inches is written in millimetres.
 *
 * @example writeLength(38.1, 'in') // '1-1/2 in'
 * @example writeLength(36.5, 'in') // '36.5 mm'
 */
export function writeLength(length: number, unit: LengthUnit): string {
  if (!Number.isFinite(length)) throw new RangeError(`writeLength: not a length: ${length}`);
  const mm = Math.abs(length) < NOISE ? 0 : length;
  const metric = `${plainDecimal(mm)} mm`;
  if (unit === 'mm') return metric;
  const inches = inchText(mm);
  return inches === undefined ? metric : `${inches} in`;
}

function inchText(mm: number): string | undefined {
  const { units, denominator } = nearestInchFraction(mm, 128);
  if (inchesInMm(units, denominator) === mm) return mixedNumber(units, denominator, '-');
  for (let decimals = 1; decimals <= 4; decimals += 1) {
    const scale = 10 ** decimals;
    const scaled = Math.round((mm / INCH) * scale);
    if (inchesInMm(scaled, scale) === mm) return plainDecimal(scaled / scale);
  }
  return undefined;
}

/** What `parseLength` makes of `units / denominator` inches. */
const inchesInMm = (units: number, denominator: number): number =>
  exactRatio(BigInt(units) * 254n, BigInt(denominator) * 10n);
