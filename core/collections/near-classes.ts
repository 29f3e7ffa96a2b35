/**
 * Sorts numbers into classes of those that lie within `within` of the least of their class, and returns the
 * number of the class of each. Unlike rounding it parts no two neighbours that differ by float noise only.
 *
 *     nearClasses([1, 1.0001, 2], 0.001)(1.0001)  // 0
 *
 * Throws a RangeError when asked for a number that was not among them.
 */
export function nearClasses(values: readonly number[], within: number): (value: number) => number {
  const classes = new Map<number, number>();
  let start: number | undefined;
  let number = -1;
  for (const value of [...new Set(values)].toSorted((a, b) => a - b)) {
    if (start === undefined || value - start > within) {
      start = value;
      number += 1;
    }
    classes.set(value, number);
  }
  return (value) => {
    const found = classes.get(value);
    if (found === undefined) throw new RangeError(`nearClasses: ${value} is not one of the numbers`);
    return found;
  };
}
