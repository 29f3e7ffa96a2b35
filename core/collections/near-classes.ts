/**
 * Sorts numbers into classes of those that lie within `within` of the least of their class, and returns the
 * number of the class of each. Unlike rounding it parts no two neighbours that differ by float noise only.
 *
 *     nearClasses([1, 1.0001, 2], 0.001)(1.0001)  // 0
 */
export function nearClasses(values: readonly number[], within: number): (value: number) => number {
  const starts: number[] = [];
  for (const value of values.toSorted((a, b) => a - b)) {
    const start = starts.at(-1);
    if (start === undefined || value - start > within) starts.push(value);
  }
  return (value) => starts.findLastIndex((start) => start <= value);
}
