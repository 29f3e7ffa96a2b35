import type { LengthUnit } from '../../order/types.ts';
import { limitWords } from './limit-words.ts';
import type { BudgetModel } from './model.ts';
import { boundGroups } from './reach-lines.ts';
import { sourceShares } from './source-shares.ts';
import type { StackWay } from './stack.ts';
import { setSpread } from './set-spread.ts';
import { combinations, constantOf, setOf } from './tight-sets.ts';
import type { DrawerMargin, TightLimits } from './types.ts';

/** How much room all limits of a drawer leave together; null where its front shows no gap. */
export function drawerMargin(model: BudgetModel, unit: LengthUnit): DrawerMargin | null {
  const spreadOf = setSpread(model.errors.map(({ tolerance }) => tolerance));
  const sets = combinations(boundGroups(model)).map((set) => ({
    set,
    constant: constantOf(set),
    lost: spreadOf(set),
  }));
  const tightest = (way: StackWay | null): TightLimits | null => {
    let [best, slack] = [sets[0], Infinity];
    for (const set of sets) {
      const own = set.constant - (way === null ? 0 : set.lost[way]);
      if (own < slack) [best, slack] = [set, own];
    }
    if (best === undefined) return null;
    const { limits, perError } = setOf(best.set);
    return {
      slack,
      limits: [...new Set(limits.map((limit) => limitWords(limit, unit)))],
      shares: sourceShares(model.errors, perError),
    };
  };
  const [nominal, worst, likely] = [tightest(null), tightest('worst'), tightest('likely')];
  return nominal === null || worst === null || likely === null ? null : { nominal, worst, likely };
}
