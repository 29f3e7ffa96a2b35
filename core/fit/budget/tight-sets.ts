import type { Bound, BoundGroup } from './reach-lines.ts';

/**
 * A set of limits that contradict each other once the errors are large enough:
 * slack = constant + perError . errors is how far all its gaps can stay inside, at best.
 */
export interface TightSet {
  readonly constant: number;
  readonly perError: readonly number[];
  readonly limits: readonly Bound['limit'][];
}

/** A lower and an upper bound of one move: weight * slack <= constant + perError . errors + slope * turn. */
export interface Pair {
  readonly weight: number;
  readonly constant: number;
  readonly perError: readonly number[];
  readonly slope: number;
  readonly limits: readonly Bound['limit'][];
}

/** The sum of two pairs, `a` times `up` and `b` times `down`, in which the turn cancels; or a pair that has none. */
export interface Combination {
  readonly up: Pair;
  readonly a: number;
  readonly down: Pair | null;
  readonly b: number;
}

/** mm per mm. Turns that change a bound by less do not change it. */
const NO_SLOPE = 1e-12;

/**
 * Every set of limits that can be the one that fails. The least of their slacks is exactly the most slack
 * that the best setting of all adjusters leaves (linear programming duality; the last variable, the turn, is
 * eliminated by adding a pair that a turn eases to one that it tightens).
 */
export const tightSets = (groups: readonly BoundGroup[]): readonly TightSet[] =>
  combinations(groups).map(setOf);

/** The same sets, not worked out yet: there are hundreds, and often one is wanted. */
export function combinations(groups: readonly BoundGroup[]): readonly Combination[] {
  const { level, rising, falling } = pairsOf(groups);
  const sets: Combination[] = level.map((up) => ({ up, a: 1, down: null, b: 0 }));
  for (const up of rising) for (const down of falling) sets.push({ up, a: -down.slope, down, b: up.slope });
  // Sets of the adjusters' own ends alone have no slack to speak of.
  return sets.filter((set) => weightOf(set) > 0);
}

/** The pairs that a turn leaves alone, eases, and tightens. */
export function pairsOf(
  groups: readonly BoundGroup[],
): Readonly<Record<'level' | 'rising' | 'falling', readonly Pair[]>> {
  const pairs = groups.flatMap(({ lower, upper }) =>
    lower.flatMap((low) => upper.map((high) => pairOf(low, high))),
  );
  return {
    level: pairs.filter(({ slope }) => Math.abs(slope) <= NO_SLOPE),
    rising: pairs.filter(({ slope }) => slope > NO_SLOPE),
    falling: pairs.filter(({ slope }) => slope < -NO_SLOPE),
  };
}

const weightOf = ({ up, a, down, b }: Combination): number => a * up.weight + b * (down?.weight ?? 0);

/** mm of slack when nothing is off. */
export const constantOf = (set: Combination): number =>
  (set.a * set.up.constant + set.b * (set.down?.constant ?? 0)) / weightOf(set);

/** How the slack grows with each mm of an error, by its place. */
export const growthOf = (set: Combination, error: number): number =>
  (set.a * (set.up.perError[error] ?? 0) + set.b * (set.down?.perError[error] ?? 0)) / weightOf(set);

export const setOf = (set: Combination): TightSet => ({
  constant: constantOf(set),
  perError: set.up.perError.map((_, error) => growthOf(set, error)),
  limits: [...set.up.limits, ...(set.down?.limits ?? [])],
});

const pairOf = (low: Bound, high: Bound): Pair => ({
  weight: low.weight + high.weight,
  constant: high.constant - low.constant,
  perError: high.perError.map((each, index) => each - (low.perError[index] ?? 0)),
  slope: high.slope - low.slope,
  limits: [low.limit, high.limit],
});
