import type { Span } from '../fit/budget/types.ts';
import { formatLength } from '../units/format-length.ts';
import { INCH } from '../units/inch-fraction.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import type { LengthUnit } from '../units/unit.ts';
import type { Tick } from './types.ts';

/** mm from tick to tick, in steps that a rule has. */
const STEPS: Readonly<Record<LengthUnit, readonly number[]>> = {
  in: [1 / 64, 1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 4].map((inches) => inches * INCH),
  mm: [0.2, 0.5, 1, 2, 5, 10, 20, 50, 100],
};

/** More words than these run into each other in a narrow panel. */
const MOST_TICKS = 7;

/** Marks from 0 on both ways, as far apart as needed for few of them. */
export function axisTicks({ least, most }: Span, unit: LengthUnit): readonly Tick[] {
  const step = STEPS[unit].find((each) => (most - least) / each < MOST_TICKS) ?? (most - least) / MOST_TICKS;
  const [first, last] = [Math.ceil(least / step - SAME_LENGTH), Math.floor(most / step + SAME_LENGTH)];
  return Array.from({ length: last - first + 1 }, (_, index) => {
    const at = (first + index) * step || 0;
    const words = at === 0 ? '0' : `${at > 0 ? '+' : '−'}${formatLength(Math.abs(at), unit)}`;
    return { at, words };
  });
}
