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
interface Pair {
  readonly weight: number;
  readonly constant: number;
  readonly perError: readonly number[];
  readonly slope: number;
  readonly limits: readonly Bound['limit'][];
}

/** mm per mm. Turns that change a bound by less do not change it. */
const NO_SLOPE = 1e-12;

/**
 * Every set of limits that can be the one that fails. The least of their slacks is exactly the most slack
 * that the best setting of all adjusters leaves (linear programming duality; the last variable, the turn, is
 * eliminated by adding a pair that a turn eases to one that it tightens).
 */
export function tightSets(groups: readonly BoundGroup[]): readonly TightSet[] {
  const pairs = groups.flatMap(({ lower, upper }) =>
    lower.flatMap((low) => upper.map((high) => pairOf(low, high))),
  );
  const level = pairs.filter(({ slope }) => Math.abs(slope) <= NO_SLOPE);
  const rising = pairs.filter(({ slope }) => slope > NO_SLOPE);
  const falling = pairs.filter(({ slope }) => slope < -NO_SLOPE);
  const crossings = rising.flatMap((up) => falling.map((down) => levelled(up, down)));
  // Sets of the adjusters' own ends alone have no slack to speak of.
  return [...level, ...crossings]
    .filter(({ weight }) => weight > 0)
    .map(({ weight, constant, perError, limits }) => ({
      constant: constant / weight,
      perError: perError.map((each) => each / weight),
      limits,
    }));
}

const pairOf = (low: Bound, high: Bound): Pair => ({
  weight: low.weight + high.weight,
  constant: high.constant - low.constant,
  perError: high.perError.map((each, index) => each - (low.perError[index] ?? 0)),
  slope: high.slope - low.slope,
  limits: [low.limit, high.limit],
});

/** The sum of two pairs in which the turn cancels. */
function levelled(up: Pair, down: Pair): Pair {
  const [a, b] = [-down.slope, up.slope];
  return {
    weight: a * up.weight + b * down.weight,
    constant: a * up.constant + b * down.constant,
    perError: up.perError.map((each, index) => a * each + b * (down.perError[index] ?? 0)),
    slope: 0,
    limits: [...up.limits, ...down.limits],
  };
}
