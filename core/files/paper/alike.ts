import { sameLength, SAME_OVERHANG } from '../../units/tolerances.ts';

/** What two drawers must have in common to share a sheet or a template: words to the letter, numbers within a tolerance. */
export interface Likeness {
  readonly words: readonly string[];
  readonly numbers: readonly number[];
}

export const alike = (a: Likeness, b: Likeness): boolean =>
  a.words.length === b.words.length &&
  a.words.every((word, index) => word === b.words[index]) &&
  a.numbers.length === b.numbers.length &&
  a.numbers.every((value, index) => sameLength(value, b.numbers[index] ?? Infinity, SAME_OVERHANG));
