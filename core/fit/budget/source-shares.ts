import type { ToleranceSource } from '../../rules/types.ts';
import type { ErrorTerm } from './errors.ts';
import { deviationOf } from './stack.ts';
import type { SourceShare } from './types.ts';

/** How much of the variance of a sum of errors each source brings, the largest first; none brings 0. */
export function sourceShares(
  errors: readonly ErrorTerm[],
  coefficients: readonly number[],
): readonly SourceShare[] {
  const bySource = new Map<ToleranceSource, number>();
  for (const [index, { source, tolerance }] of errors.entries()) {
    const variance = ((coefficients[index] ?? 0) * deviationOf(tolerance)) ** 2;
    bySource.set(source, (bySource.get(source) ?? 0) + variance);
  }
  const total = [...bySource.values()].reduce((sum, each) => sum + each, 0);
  return [...bySource]
    .filter(([, variance]) => variance > 0)
    .map(([source, variance]) => ({ source, share: variance / total }))
    .toSorted((a, b) => b.share - a.share);
}
