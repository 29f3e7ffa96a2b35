/** Percent of moisture content between which Eq 13-2 holds. */
const LINEAR_FROM = 6;
const LINEAR_TO = 14;

/** Percent of moisture content at which fibres are saturated: wetter wood does not swell. */
const SATURATED = 30;

/**
 * How much a dimension across the grain changes, mm, when its moisture content goes from `from` to `to`
 * percent. `coefficient` is the change per percent, C_R quartersawn or C_T flatsawn, of the Wood Handbook's
 * Table 13-5.
 *
 * Between 6 and 14 % Eq 13-2, change = size * coefficient * (to - from); outside of that Eq 13-3,
 * change = size * (to - from) / (30 * 100 / S - 30 + from), FPL-GTR-190 p. 13-17ff.
 *
 * @example dimensionalChange(232, 0.00245, 8, 11) // 1.7052, the handbook's white fir
 */
export function dimensionalChange(size: number, coefficient: number, from: number, to: number): number {
  if (coefficient === 0) return 0;
  const start = Math.min(from, SATURATED);
  const end = Math.min(to, SATURATED);
  const linear = [start, end].every((moisture) => moisture >= LINEAR_FROM && moisture <= LINEAR_TO);
  if (linear) return size * coefficient * (end - start);
  return (size * (end - start)) / ((SATURATED * 100) / shrinkageOf(coefficient) - SATURATED + start);
}

/**
 * Shrinkage from green to ovendry in percent, of which the table's coefficient was made: C = S / (3000 - 20 S)
 * is Eq 13-3 at 10 %, and gives every row of Table 13-5 for a single species to its last digit, but for
 * western redcedar, northern white cedar and redwood, which saturate at 22 %; for those it is a little off.
 */
export const shrinkageOf = (coefficient: number): number => (3000 * coefficient) / (1 + 20 * coefficient);
