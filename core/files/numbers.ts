import { BULGE_DECIMALS, COORDINATE_DECIMALS } from '../units/tolerances.ts';

/**
 * A number as a plain decimal without exponent or -0: `fixedDecimal(1e-7, 6)` is `0.000000`.
 * Not finite, or so large that JavaScript would write an exponent, is a programmer's error: drawings are
 * checked before anything is written.
 */
export function fixedDecimal(value: number, decimals: number): string {
  if (!Number.isFinite(value) || Math.abs(value) >= 1e15) {
    throw new RangeError(`fixedDecimal: ${value} is no number for a file`);
  }
  const text = value.toFixed(decimals);
  return text.startsWith('-0') && Number(text) === 0 ? text.slice(1) : text;
}

/** A coordinate or length in the file's unit. */
export const coordinate = (value: number): string => fixedDecimal(value, COORDINATE_DECIMALS);

/** A bulge, a pure number. */
export const bulgeNumber = (value: number): string => fixedDecimal(value, BULGE_DECIMALS);
