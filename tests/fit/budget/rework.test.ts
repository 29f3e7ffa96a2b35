import { describe, expect, test } from 'vitest';
import { expectedRework } from '../../../core/fit/budget/rework.ts';
import { shareInterval } from '../../../core/fit/budget/share-interval.ts';

describe('shareInterval', () => {
  // Newcombe 1998, Statistics in Medicine 17:857, Table I, method 3 (score, no continuity correction); from memory.
  test.for([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ] as const)('%d of %d: from %d to %d', ([count, samples, low, high]) => {
    const interval = shareInterval(count, samples);
    expect(interval.low).toBeCloseTo(low, 4);
    expect(interval.high).toBeCloseTo(high, 4);
    expect(interval.share).toBe(count / samples);
  });

  test('its ends are where the score test just rejects: |share - p| = 1.96 standard errors of p', () => {
    for (const [count, samples] of [
      [3, 40],
      [999, 1000],
      [500, 1000],
    ] as const) {
      const { share, low, high } = shareInterval(count, samples);
      for (const p of [low, high])
        expect(Math.abs(share - p) / Math.sqrt((p * (1 - p)) / samples)).toBeCloseTo(1.959964, 5);
    }
  });

  test('throws where nothing was sampled', () => {
    expect(() => shareInterval(0, 0)).toThrow(RangeError);
  });
});

describe('expectedRework', () => {
  // Newcombe 1998, Statistics in Medicine 17:873, method 10 for 56/70 - 48/80: 0.0524 to 0.3339; from memory.
  // One front of each group: 56/70 of the first needs rework, and 1 - 48/80 of the second.
  test('joins two groups as the published difference of proportions does', () => {
    const rework = expectedRework([
      { fronts: 1, reach: shareInterval(14, 70) },
      { fronts: 1, reach: shareInterval(48, 80) },
    ]);
    expect(rework.expected).toBeCloseTo(1.2, 12);
    expect(rework.low - 1).toBeCloseTo(0.0524, 4);
    expect(rework.high - 1).toBeCloseTo(0.3339, 4);
  });

  test('of one group it is that group, as often as it has fronts', () => {
    const reach = shareInterval(90, 100);
    const { expected, low, high, fronts } = expectedRework([{ fronts: 12, reach }]);
    expect([expected, low, high, fronts]).toEqual([
      expect.closeTo(1.2, 12),
      expect.closeTo(12 * (1 - reach.high), 12),
      expect.closeTo(12 * (1 - reach.low), 12),
      12,
    ]);
  });
});
