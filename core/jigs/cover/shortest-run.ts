export interface Run {
  readonly order: readonly number[];
  /** The sum of what neighbours keep. */
  readonly kept: number;
  /** No order keeps more. */
  readonly mostKept: number;
}

/** How many links of the same items; symmetric. */
export type Keeps = (a: number, b: number) => number;

/** Beyond this the table of subsets grows too large. */
const EXACT = 12;

/** The order of `count` items in which neighbours keep most: exact for few, else found step by step. */
export const shortestRun = (count: number, keeps: Keeps): Run =>
  count <= EXACT ? exactRun(count, keeps) : improvedRun(count, keeps);

/** Held and Karp's table: for each subset and last item, the most that an order of them keeps. */
function exactRun(count: number, keeps: Keeps): Run {
  if (count === 0) return { order: [], kept: 0, mostKept: 0 };
  const full = 2 ** count - 1;
  const best: number[][] = Array.from({ length: full + 1 }, () =>
    Array.from({ length: count }, () => -Infinity),
  );
  const from: number[][] = best.map((row) => row.map(() => -1));
  for (let item = 0; item < count; item += 1) set(best, 1 << item, item, 0);
  for (let subset = 1; subset <= full; subset += 1) {
    for (let last = 0; last < count; last += 1) {
      const sofar = best[subset]?.[last] ?? -Infinity;
      if (sofar === -Infinity) continue;
      for (let next = 0; next < count; next += 1) {
        if ((subset & (1 << next)) !== 0) continue;
        const kept = sofar + keeps(last, next);
        if (kept <= (best[subset | (1 << next)]?.[next] ?? 0)) continue;
        set(best, subset | (1 << next), next, kept);
        set(from, subset | (1 << next), next, last);
      }
    }
  }
  const kept = Math.max(...(best[full] ?? []));
  let last = (best[full] ?? []).indexOf(kept);
  const order: number[] = [];
  for (let subset = full; last >= 0;) {
    order.push(last);
    const before = from[subset]?.[last] ?? -1;
    subset &= ~(1 << last);
    last = before;
  }
  return { order: firstFirst(order), kept, mostKept: kept };
}

function set(table: number[][], row: number, column: number, value: number): void {
  const cells = table[row];
  if (cells !== undefined) cells[column] = value;
}

/** The best of the nearest-neighbour orders from each start, then stretches turned about while that keeps more. */
function improvedRun(count: number, keepsOf: Keeps): Run {
  const items = Array.from({ length: count }, (_, item) => item);
  const table = items.map((a) => items.map((b) => keepsOf(a, b)));
  const keeps = (a: number | undefined, b: number | undefined): number => table[a ?? -1]?.[b ?? -1] ?? 0;
  const runs = items.map((start) => nearest(start, items, keeps));
  let found = runs.reduce((best, run) => (keptBy(run, keeps) > keptBy(best, keeps) ? run : best));
  for (let isBetter = true; isBetter;) {
    isBetter = false;
    for (let from = 0; from < count - 1; from += 1) {
      for (let to = from + 1; to < count; to += 1) {
        const [before, first, last, after] = [found[from - 1], found[from], found[to], found[to + 1]];
        const gain = keeps(before, last) + keeps(first, after) - keeps(before, first) - keeps(last, after);
        if (gain <= 0) continue;
        const turned = found.slice(from, to + 1).toReversed();
        found = [...found.slice(0, from), ...turned, ...found.slice(to + 1)];
        isBetter = true;
      }
    }
  }
  // Each item has two neighbours at most, and the ends one: half of the best two of each, whatever the order.
  const twoBest = items.reduce((sum, item) => {
    const [one = 0, two = 0] = items
      .filter((other) => other !== item)
      .map((other) => keeps(item, other))
      .toSorted((a, b) => b - a);
    return sum + one + two;
  }, 0);
  return { order: firstFirst(found), kept: keptBy(found, keeps), mostKept: Math.floor(twoBest / 2) };
}

function nearest(start: number, items: readonly number[], keeps: Keeps): readonly number[] {
  const order = [start];
  const open = new Set(items);
  open.delete(start);
  for (let last = start; open.size > 0;) {
    const [next = -1] = [...open].toSorted((a, b) => keeps(last, b) - keeps(last, a) || a - b);
    open.delete(next);
    order.push(next);
    last = next;
  }
  return order;
}

const keptBy = (order: readonly number[], keeps: Keeps): number =>
  order.reduce((sum, item, place) => sum + (place === 0 ? 0 : keeps(order[place - 1] ?? item, item)), 0);

/** An order is as good the other way round: the way that starts nearer to the first item. */
const firstFirst = (order: readonly number[]): readonly number[] =>
  (order.at(-1) ?? 0) < (order[0] ?? 0) ? order.toReversed() : order;
