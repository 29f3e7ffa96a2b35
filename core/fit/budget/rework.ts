import type { SampledShare } from './share-interval.ts';
import type { OrderBudget } from './types.ts';

/** Fronts that are alike, and the share of them that comes in. */
export interface SampledGroup {
  readonly fronts: number;
  readonly reach: SampledShare;
}

/**
 * How many fronts the adjusters will not bring in, of all groups. The 95 % interval joins those of the groups,
 * whose samples are independent, by the square-and-add rule (Newcombe 1998, method 10; Zou and Donner 2008).
 * It tells how well the mean is known, not how much one order will differ from it.
 */
export function expectedRework(groups: readonly SampledGroup[]): NonNullable<OrderBudget['rework']> {
  const sum = (of: (group: SampledGroup) => number) => groups.reduce((total, each) => total + of(each), 0);
  const fronts = sum((group) => group.fronts);
  const expected = sum((group) => group.fronts * (1 - group.reach.share));
  const below = sum((group) => (group.fronts * (group.reach.high - group.reach.share)) ** 2);
  const above = sum((group) => (group.fronts * (group.reach.share - group.reach.low)) ** 2);
  return {
    fronts,
    expected,
    low: Math.max(0, expected - Math.sqrt(below)),
    high: Math.min(fronts, expected + Math.sqrt(above)),
  };
}
