import { adjustersOf, rangeOf } from '../fit/budget/adjusters.ts';
import type { AdjustmentBudget, Span } from '../fit/budget/types.ts';
import { moveWords } from '../fit/dial-in/move-words.ts';
import { inSteps } from '../fit/dial-in/steps.ts';
import { ADJUSTER_OF } from '../fit/dial-in/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import type { LengthUnit } from '../units/unit.ts';

const ENDLESS: Span = { least: -Infinity, most: Infinity };

/** Heights first, for a turn moves the sides. */
const ORDER = ['heightLeft', 'heightRight', 'side'] as const;

/**
 * What to set each adjuster to when nothing is off, from 0 and in its steps, in words: `Raise the left side by
 * 1.5 mm: 3 clicks.` None where all stay at 0. A setting past the adjuster's range says so.
 */
export function startSettings(
  { fit, start }: AdjustmentBudget,
  standard: ShopStandard,
  unit: LengthUnit,
): readonly string[] {
  const adjusters = adjustersOf(fit, standard);
  return ORDER.flatMap((name) => {
    const range = rangeOf(adjusters, ADJUSTER_OF[name]);
    const stepped = inSteps(start[name], adjusters[ADJUSTER_OF[name]], ENDLESS);
    if (Math.abs(stepped.by) < SAME_LENGTH) return [];
    const reached = stepped.by >= range.least - SAME_LENGTH && stepped.by <= range.most + SAME_LENGTH;
    const words = moveWords(name, stepped, unit);
    return [reached ? words : `${words} The adjuster does not go that far.`];
  });
}
