import type { Span } from './demand.ts';

/**
 * Whether a setting that serves these spans along an axis can be the best for some of them. The adjustment of
 * a group is convex and piecewise linear: it is least at the best overhang of a member, unless all medians lie
 * beyond the end of what the group has in common, and then at that end. So an end counts only if some other
 * member's best lies beyond it.
 */
export const canBeBest = (at: number, served: readonly Span[]): boolean =>
  served.some(({ best }) => best === at) ||
  (served.some(({ lo }) => lo === at) && served.some(({ best }) => best < at)) ||
  (served.some(({ hi }) => hi === at) && served.some(({ best }) => best > at));

/** Every end and best of the spans, sorted. */
export const breakpoints = (spans: readonly Span[]): readonly number[] =>
  [...new Set(spans.flatMap(({ lo, hi, best }) => [lo, hi, best]))].toSorted((a, b) => a - b);
