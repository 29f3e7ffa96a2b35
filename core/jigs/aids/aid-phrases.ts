import { formatLength } from '../../units/format-length.ts';
import { INCH } from '../../units/inch-fraction.ts';
import type { LengthUnit } from '../../units/unit.ts';

/** mm of 1/64 in, and the 0.1 mm that a metric rule is read to. */
const READ_TO: Readonly<Record<LengthUnit, number>> = { in: INCH / 64, mm: 0.1 };

/** A depth as it is set, rounded down to what a rule shows: a stop errs to the shallow side. Length in mm. */
export function depthText(depth: number, unit: LengthUnit): string {
  const step = READ_TO[unit];
  return formatLength(Math.floor(depth / step + 1e-6) * step, unit);
}

/**
 * A size in mm that is no rounded one, a bit or a sheet: `7/64"` where the shop reads inches and it is a fraction
 * of one, and in millimetres otherwise.
 */
export function sizeText(size: number, unit: LengthUnit): string {
  const text = formatLength(size, unit);
  return text.includes('.') ? formatLength(size, 'mm') : text;
}

/** An angle in degrees, one decimal at most. */
export const degreesText = (angle: number): string => `${Number(angle.toFixed(1))}°`;
