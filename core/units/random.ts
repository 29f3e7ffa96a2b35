/** A source of random numbers: each call gives the next one, 0 <= u < 1. */
export type Random = () => number;

/** The four 32-bit words that the generator keeps; not all of them 0. */
export type RandomState = readonly [number, number, number, number];

const rotateLeft = (word: number, by: number): number => (word << by) | (word >>> (32 - by));

/**
 * The generator xoshiro128** 1.1 of Blackman and Vigna: whole numbers from 0 to 2^32 - 1, the same ones for
 * the same state on any machine.
 */
export function xoshiro(state: RandomState): () => number {
  let [a, b, c, d] = state;
  return () => {
    const word = Math.imul(rotateLeft(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotateLeft(d, 11);
    return word;
  };
}

/** A source of random numbers that one whole number, the seed, settles. */
export function randomFrom(seed: number): Random {
  const next = xoshiro([mix32(seed + GOLDEN), mix32(seed + 2 * GOLDEN), mix32(seed + 3 * GOLDEN), 1]);
  // 32 of a double's 53 bits: steps of 2.3e-10, far finer than any tolerance needs.
  return () => next() / 2 ** 32;
}

/** A seed made of numbers: the same numbers give the same seed, nearly the same ones another. */
export const seedOf = (numbers: readonly number[]): number =>
  numbers.reduce((seed, number) => {
    const [low = 0, high = 0] = new Uint32Array(new Float64Array([number]).buffer);
    return mix32(mix32(seed ^ low) ^ high);
  }, GOLDEN);

/** 2^32 over the golden ratio. */
const GOLDEN = 0x9e37_79b9;

/** The finishing step of MurmurHash3: every bit of the word comes to depend on every other. */
function mix32(word: number): number {
  let h = word | 0;
  h = Math.imul(h ^ (h >>> 16), 0x85eb_ca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2_ae35);
  return (h ^ (h >>> 16)) >>> 0;
}
