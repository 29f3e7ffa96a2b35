/** Inches in mm. International inch, exactly 25.4 mm (agreement of 1959, from memory). */
export const INCH = 25.4;

/**
 * The nearest fraction of an inch: `units` parts of 1/`denominator`, reduced; the sign is on `units`.
 *
 * @example nearestInchFraction(36.5125, 64) // { units: 23, denominator: 16 }
 */
export function nearestInchFraction(
  mm: number,
  denominator: number,
): { readonly units: number; readonly denominator: number } {
  let units = Math.round((mm / INCH) * denominator);
  let parts = denominator;
  while (parts % 2 === 0 && units % 2 === 0) {
    units /= 2;
    parts /= 2;
  }
  return { units: units === 0 ? 0 : units, denominator: parts };
}

/** A mixed number: `mixedNumber(23, 16, ' ')` is `1 7/16`, `mixedNumber(-3, 32, '-')` is `-3/32`. */
export function mixedNumber(units: number, denominator: number, joint: ' ' | '-'): string {
  const size = Math.abs(units);
  const whole = Math.floor(size / denominator);
  const rest = size % denominator;
  const sign = units < 0 ? '-' : '';
  if (rest === 0) return `${sign}${whole}`;
  return `${sign}${whole === 0 ? '' : `${whole}${joint}`}${rest}/${denominator}`;
}
