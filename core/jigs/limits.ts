import { SAME_LENGTH } from '../units/tolerances.ts';
import { mmText } from '../units/mm-text.ts';
import type { ParameterSpec } from './types.ts';

/** Which parameter is outside its limits, in words, or null when none is. */
export function outsideLimits(
  specs: readonly ParameterSpec[],
  parameters: Readonly<Record<string, number>>,
): string | null {
  for (const { name, words, unit, min, max } of specs) {
    const value = parameters[name];
    if (value === undefined) throw new RangeError(`no value for the parameter ${name}`);
    const text = (number: number): string => (unit === 'mm' ? mmText(number) : `${number}`);
    if (value < min - SAME_LENGTH) return `${words} of ${text(value)} is below the least, ${text(min)}`;
    if (value > max + SAME_LENGTH) return `${words} of ${text(value)} is above the most, ${text(max)}`;
  }
  return null;
}
