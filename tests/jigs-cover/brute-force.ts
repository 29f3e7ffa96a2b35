/**
 * Independent answers for small cases, by trying everything. A need is a box: one range for each axis, in whole
 * millimetres. Settings are tried at half millimetres, so that it shows if a best setting lay between the ends
 * and wanted values of its needs.
 */
export interface Box {
  readonly weight: number;
  readonly axes: readonly { readonly lo: number; readonly hi: number; readonly wanted: number }[];
}

/** For each number of jigs the least total adjustment, by every way to share the needs out; absent: impossible. */
export function byPartitions(boxes: readonly Box[]): ReadonlyMap<number, number> {
  const best = new Map<number, number>();
  const share = (index: number, groups: readonly (readonly Box[])[]): void => {
    const box = boxes[index];
    if (box === undefined) {
      const total = groups.reduce((sum, group) => sum + leastOf(group), 0);
      if (total < (best.get(groups.length) ?? Infinity)) best.set(groups.length, total);
      return;
    }
    for (const group of groups) {
      share(
        index + 1,
        groups.map((other) => (other === group ? [...group, box] : other)),
      );
    }
    share(index + 1, [...groups, [box]]);
  };
  share(0, []);
  return best;
}

/** The least total adjustment of one jig for all of these; Infinity where none serves all. */
function leastOf(group: readonly Box[]): number {
  let total = 0;
  for (const axis of (group[0]?.axes ?? []).keys()) {
    let least = Infinity;
    for (let at = GRID.from; at <= GRID.to; at += GRID.step) {
      let sum = 0;
      for (const { weight, axes } of group) {
        const range = axes[axis];
        sum +=
          range !== undefined && range.lo <= at && at <= range.hi
            ? weight * Math.abs(at - range.wanted)
            : Infinity;
      }
      least = Math.min(least, sum);
    }
    total += least;
  }
  return total;
}

const GRID = { from: 0, to: 16, step: 0.5 } as const;

/** The fewest points of a grid that meet all boxes, by trying all choices of 1, 2, 3, ... points. */
export function fewestByPoints(boxes: readonly Box[], points: readonly (readonly number[])[]): number {
  const hits = points.map((point) => new Set(boxes.filter((box) => isIn(point, box))));
  const choose = (count: number, from: number, open: readonly Box[]): boolean => {
    if (open.length === 0) return true;
    if (count === 0) return false;
    return hits.some(
      (hit, index) =>
        index >= from &&
        choose(
          count - 1,
          index + 1,
          open.filter((box) => !hit.has(box)),
        ),
    );
  };
  let count = 0;
  while (!choose(count, 0, boxes)) count += 1;
  return count;
}

const isIn = (point: readonly number[], { axes }: Box): boolean =>
  axes.every(({ lo, hi }, axis) => lo <= (point[axis] ?? Number.NaN) && (point[axis] ?? Number.NaN) <= hi);

/** The most boxes of which no two meet. */
export function mostApart(boxes: readonly Box[]): number {
  const apart = (a: Box, b: Box): boolean =>
    a.axes.some(({ lo, hi }, axis) => {
      const other = b.axes[axis];
      return other === undefined || hi < other.lo || other.hi < lo;
    });
  const most = (from: number, chosen: readonly Box[]): number =>
    boxes.reduce(
      (best, box, index) =>
        index >= from && chosen.every((other) => apart(box, other))
          ? Math.max(best, most(index + 1, [...chosen, box]))
          : best,
      chosen.length,
    );
  return most(0, []);
}

/**
 * For each number of blocks the least total adjustment, by every choice of up to `most` widths of whole
 * millimetres and every way to pair them.
 */
export function byBlocks(
  boxes: readonly (Box & { readonly alone: boolean })[],
  canPair: (a: number, b: number) => boolean,
  most: number,
): ReadonlyMap<number, number> {
  const best = new Map<number, number>();
  const pair = (open: readonly number[], blocks: readonly (readonly number[])[]): void => {
    const [first, ...rest] = open;
    if (first === undefined) {
      const total = boxes.reduce((sum, { axes: [range], weight, alone }) => {
        const ats = blocks.filter((block) => !alone || block.length === 1).flat();
        const lengths = ats.flatMap((at) =>
          range !== undefined && range.lo <= at && at <= range.hi ? [Math.abs(at - range.wanted)] : [],
        );
        return sum + weight * Math.min(Infinity, ...lengths);
      }, 0);
      if (total < (best.get(blocks.length) ?? Infinity)) best.set(blocks.length, total);
      return;
    }
    pair(rest, [...blocks, [first]]);
    for (const other of rest) {
      if (!canPair(first, other)) continue;
      pair(
        rest.filter((at) => at !== other),
        [...blocks, [first, other]],
      );
    }
  };
  const choose = (from: number, widths: readonly number[]): void => {
    if (widths.length > 0) pair(widths, []);
    if (widths.length === most) return;
    for (let at = from; at <= WIDTHS; at += 1) choose(at, [...widths, at]);
  };
  choose(0, []);
  return best;
}

/** mm. The same width may be chosen twice: for a block and alone. */
const WIDTHS = 10;

/** The least over all numbers of jigs up to this one. */
export const leastUpTo = (best: ReadonlyMap<number, number>, jigs: number): number =>
  Math.min(...[...best].filter(([count]) => count <= jigs).map(([, total]) => total));

export const fewestOf = (best: ReadonlyMap<number, number>): number =>
  Math.min(...[...best].filter(([, total]) => total < Infinity).map(([count]) => count));
