import type { BudgetModel } from './model.ts';
import { boundGroups } from './reach-lines.ts';
import { setSpread } from './set-spread.ts';
import { constantOf, pairsOf, type Combination, type Pair } from './tight-sets.ts';

/**
 * The least slack of all sets at three standard deviations, mm; `most` where that is less. Quick where nearly all
 * sets have more: spreads are norms, so a sum of two pairs loses no more than the pairs do one by one, and a set
 * that has enough even then is not looked into.
 */
export function leastSlack(model: BudgetModel, most: number): number {
  const spreadOf = setSpread(model.errors.map(({ tolerance }) => tolerance));
  const { level, rising, falling } = pairsOf(boundGroups(model));
  /** What is left of a pair by itself at least, times its weight. */
  const sure = (up: Pair): number => {
    const { deviation } = spreadOf({ up: { ...up, weight: 1 }, a: 1, down: null, b: 0 });
    return up.constant - 3 * deviation;
  };
  let least = most;
  const take = (set: Combination): void => {
    least = Math.min(least, constantOf(set) - spreadOf(set).likely);
  };
  for (const up of level) if (up.weight > 0) take({ up, a: 1, down: null, b: 0 });
  const downs = falling.map((down) => ({ down, left: sure(down) }));
  for (const up of rising) {
    const left = sure(up);
    for (const { down, left: other } of downs) {
      const [a, b] = [-down.slope, up.slope];
      const weight = a * up.weight + b * down.weight;
      if (weight > 0 && a * left + b * other < least * weight) take({ up, a, down, b });
    }
  }
  return least;
}
