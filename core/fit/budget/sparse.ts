/** A row of coefficients without those that are 0. */
export interface SparseRow {
  readonly at: Int32Array;
  readonly values: Float64Array;
}

export function sparseRow(coefficients: readonly number[]): SparseRow {
  const used = [...coefficients.entries()].filter(([, value]) => value !== 0);
  return {
    at: Int32Array.from(used, ([index]) => index),
    values: Float64Array.from(used, ([, value]) => value),
  };
}

/** The sum of the row's coefficients times the values that they stand for. */
export function dot({ at, values }: SparseRow, of: Float64Array): number {
  let sum = 0;
  for (let index = 0; index < at.length; index += 1) sum += (values[index] ?? 0) * (of[at[index] ?? 0] ?? 0);
  return sum;
}
