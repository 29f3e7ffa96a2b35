import { fallsShort } from '../fit/budget/falls-short.ts';
import type { AdjustmentBudget, TightLimits } from '../fit/budget/types.ts';
import { formatLength } from '../units/format-length.ts';
import type { LengthUnit } from '../units/unit.ts';

/** How surely a front comes in: at worst, likely, not likely, not even when made to size; or nothing to bring in. */
export type Verdict = 'worst' | 'likely' | 'unlikely' | 'never' | 'no gap';

/** Whether a front comes into its gaps with the adjusters alone, in a sentence, and what is scarcest. */
export function reachWords(
  { margin, reachableAtWorst, reachableLikely }: AdjustmentBudget,
  unit: LengthUnit,
): { readonly verdict: Verdict; readonly words: string; readonly scarcest: readonly string[] } {
  if (margin === null) {
    return {
      verdict: 'no gap',
      words:
        'This front laps its members all round and shows no gap of its own, so there is nothing to bring in; a gap to the front below it comes in with that one.',
      scarcest: [],
    };
  }
  const { nominal, worst, likely } = margin;
  const mm = ({ slack }: TightLimits): string => formatLength(Math.abs(slack), unit);
  if (fallsShort(nominal.slack)) {
    return {
      verdict: 'never',
      words: `Does not come in with the adjusters alone, even when everything is made to size: ${mm(nominal)} is missing.`,
      scarcest: nominal.limits,
    };
  }
  if (reachableAtWorst) {
    return {
      verdict: 'worst',
      words: `Comes in with the adjusters alone at worst case: with every error at its worst, ${mm(worst)} to spare.`,
      scarcest: worst.limits,
    };
  }
  if (reachableLikely) {
    return {
      verdict: 'likely',
      words: `Likely comes in with the adjusters alone: ${mm(likely)} to spare at three standard deviations; with every error at its worst, ${mm(worst)} is missing.`,
      scarcest: worst.limits,
    };
  }
  return {
    verdict: 'unlikely',
    words: `May not come in with the adjusters alone: ${mm(likely)} is missing at three standard deviations, ${mm(worst)} with every error at its worst.`,
    scarcest: likely.limits,
  };
}
