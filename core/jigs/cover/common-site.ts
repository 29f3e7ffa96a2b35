import { serves, type Demand, type Site } from './demand.ts';

/** The one site that serves all of these with the least adjustment in all; null when none serves all. */
export function commonSite(demands: readonly Demand[]): Site | null {
  const axes = demands[0]?.spans.length ?? 0;
  const site = Array.from({ length: axes }, (_, axis) => {
    const spans = demands.flatMap((demand) => {
      const span = demand.spans[axis];
      return span === undefined ? [] : [{ ...span, weight: demand.weight }];
    });
    const lo = Math.max(...spans.map((span) => span.lo));
    const hi = Math.min(...spans.map((span) => span.hi));
    return Math.min(Math.max(weightedMedian(spans), lo), hi);
  });
  return demands.length > 0 && demands.every((demand) => serves(site, demand)) ? site : null;
}

/** Where the weighted sum of distances is least; convex, so within bounds the nearest to it is best. */
function weightedMedian(spans: readonly { readonly best: number; readonly weight: number }[]): number {
  const half = spans.reduce((sum, { weight }) => sum + weight, 0) / 2;
  let sum = 0;
  for (const { best, weight } of spans.toSorted((a, b) => a.best - b.best)) {
    sum += weight;
    if (sum >= half) return best;
  }
  return Number.NaN;
}
