import { describe, expect, test } from 'vitest';
import { randomFrom, seedOf, xoshiro } from '../../../core/units/random.ts';

describe('xoshiro', () => {
  // The reference implementation xoshiro128starstar.c (v1.1) from the state 1, 2, 3, 4, as quoted by the tests
  // of the crate rand_xoshiro.
  test('gives the numbers of the reference implementation', () => {
    const next = xoshiro([1, 2, 3, 4]);
    expect(Array.from({ length: 10 }, next)).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ]);
  });
});

describe('randomFrom', () => {
  const draw = (seed: number, count: number) => {
    const random = randomFrom(seed);
    return Array.from({ length: count }, random);
  };

  test('gives the same numbers for the same seed and others for another', () => {
    expect(draw(7, 20)).toEqual(draw(7, 20));
    expect(draw(7, 20)).not.toEqual(draw(8, 20));
  });

  test('spreads its numbers evenly over 0 to 1', () => {
    const counts = Array.from({ length: 20 }, () => 0);
    for (const u of draw(20_261_125, 100_000)) {
      expect(u >= 0 && u < 1).toBe(true);
      counts[Math.floor(u * 20)] = (counts[Math.floor(u * 20)] ?? 0) + 1;
    }
    const chiSquare = counts.reduce((sum, count) => sum + (count - 5000) ** 2 / 5000, 0);
    // Chi-square tables: 19 degrees of freedom, 0.1 % above 43.82.
    expect(chiSquare).toBeLessThan(43.82);
  });
});

describe('seedOf', () => {
  test('tells nearly equal numbers and their order apart', () => {
    const seeds = [[1, 2], [2, 1], [1, 2 + 1e-12], [1], [], [0, 1, 2]].map((numbers) => seedOf(numbers));
    expect(new Set(seeds).size).toBe(seeds.length);
  });
});
