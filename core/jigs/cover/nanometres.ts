import { SAME_LENGTH } from '../../units/tolerances.ts';

/**
 * Turns these lengths (mm) into whole nanometres, in which sums are exact and touching intervals touch.
 * Lengths nearer than half of SAME_LENGTH become the same number, on whichever side of a rounding they lie;
 * none moves by more than SAME_LENGTH, which is a nanometre.
 */
export function nanometres(lengths: readonly number[]): (length: number) => number {
  const known = new Map<number, number>();
  let start = -Infinity;
  for (const length of lengths.toSorted((a, b) => a - b)) {
    if (length - start > SAME_LENGTH / 2) start = length;
    known.set(length, toNanometres(start));
  }
  return (length) => known.get(length) ?? toNanometres(length);
}

const PER_MM = 1 / SAME_LENGTH;

export const toNanometres = (mm: number): number => Math.round(mm * PER_MM);

export const toMm = (nm: number): number => nm / PER_MM;
