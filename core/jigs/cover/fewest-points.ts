interface Closed {
  readonly lo: number;
  readonly hi: number;
}

/**
 * The fewest points that meet every closed interval: sorted by right end, each interval not yet met gives its
 * right end. The intervals that gave one are pairwise apart, which proves that fewer points cannot do.
 *
 *     fewestPoints([{ lo: 0, hi: 2 }, { lo: 2, hi: 4 }, { lo: 4, hi: 6 }]).points  // [2, 6]
 */
export function fewestPoints<T extends Closed>(
  intervals: readonly T[],
): { readonly points: readonly number[]; readonly apart: readonly T[] } {
  const apart: T[] = [];
  for (const interval of intervals.toSorted((a, b) => a.hi - b.hi)) {
    const last = apart.at(-1);
    if (last === undefined || last.hi < interval.lo) apart.push(interval);
  }
  return { points: apart.map(({ hi }) => hi), apart };
}
