/** A source of numbers from 0 (included) to 1 (excluded); the same seed gives the same numbers. */
export type Random = () => number;

/** Seeded numbers by the mulberry32 generator (public domain); any whole number is a seed. */
export function randomFrom(seed: number): Random {
  let state = Math.trunc(seed) >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A whole number from 0 to `below` - 1. */
export const pick = (random: Random, below: number): number => Math.floor(random() * below);
