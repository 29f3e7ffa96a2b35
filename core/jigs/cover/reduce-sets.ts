/** Which rows a set covers, a bit for each. */
export type Rows = bigint;

export const rowsOf = (rows: readonly number[]): Rows => rows.reduce((mask, row) => mask | bit(row), 0n);

export const bit = (row: number): Rows => 1n << BigInt(row);

export const isWithin = (a: Rows, b: Rows): boolean => (a & ~b) === 0n;

export interface Reduced {
  /** Indexes of sets that some best cover has. */
  readonly chosen: readonly number[];
  /** What is left to choose from, and to cover; empty when the chosen ones cover all. */
  readonly sets: readonly number[];
  readonly rows: readonly number[];
}

/**
 * Makes a set-cover problem smaller without losing a cover of the fewest sets: a set within another goes, a row
 * that is covered whenever some other row is goes, and the only set of a row is chosen; until nothing changes.
 */
export function reduceSets(masks: readonly Rows[], rowCount: number): Reduced {
  const chosen: number[] = [];
  let rows = Array.from({ length: rowCount }, (_, row) => row);
  let sets = masks.map((_, index) => index);
  for (;;) {
    const before = rows.length + sets.length;
    const open = rowsOf(rows);
    sets = withoutSmaller(sets, (set) => (masks[set] ?? 0n) & open);
    const coveredBy = (row: number): Rows =>
      rowsOf([...sets.keys()].filter((place) => ((masks[sets[place] ?? -1] ?? 0n) & bit(row)) !== 0n));
    rows = withoutLarger(rows, coveredBy);
    const forced = new Set(
      rows.flatMap((row) => {
        const by = sets.filter((set) => ((masks[set] ?? 0n) & bit(row)) !== 0n);
        if (by.length === 0) throw new Error(`no set covers row ${row}`);
        return by.length === 1 ? by : [];
      }),
    );
    const covered = [...forced].reduce((mask, set) => mask | (masks[set] ?? 0n), 0n);
    chosen.push(...forced);
    sets = sets.filter((set) => !forced.has(set));
    rows = rows.filter((row) => (covered & bit(row)) === 0n);
    if (rows.length === 0) return { chosen, sets: [], rows: [] };
    if (rows.length + sets.length === before) return { chosen, sets, rows };
  }
}

/** Without items whose mask is empty or within another's; of equals the first stays. */
function withoutSmaller(items: readonly number[], maskOf: (item: number) => Rows): number[] {
  const kept: { readonly item: number; readonly mask: Rows }[] = [];
  const sized = items.map((item) => ({ item, mask: maskOf(item) }));
  for (const one of sized.toSorted((a, b) => count(b.mask) - count(a.mask))) {
    if (one.mask !== 0n && !kept.some(({ mask }) => isWithin(one.mask, mask))) kept.push(one);
  }
  return kept.map(({ item }) => item).toSorted((a, b) => a - b);
}

/** Without items whose mask holds another's; of equals the first stays. */
function withoutLarger(items: readonly number[], maskOf: (item: number) => Rows): number[] {
  const kept: { readonly item: number; readonly mask: Rows }[] = [];
  const sized = items.map((item) => ({ item, mask: maskOf(item) }));
  for (const one of sized.toSorted((a, b) => count(a.mask) - count(b.mask))) {
    if (!kept.some(({ mask }) => isWithin(mask, one.mask))) kept.push(one);
  }
  return kept.map(({ item }) => item).toSorted((a, b) => a - b);
}

function count(mask: Rows): number {
  let ones = 0;
  for (let rest = mask; rest !== 0n; rest &= rest - 1n) ones += 1;
  return ones;
}
