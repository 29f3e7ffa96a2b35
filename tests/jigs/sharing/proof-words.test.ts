import { describe, expect, test } from 'vitest';
import { proofWords } from '../../../core/jigs/sharing/proof-words.ts';

const INCH = 25.4;

const plan = {
  count: 9,
  curve: [{ jigs: 9, total: 2, largest: 1 }],
  proof: 'optimal' as const,
  step: INCH / 64,
  roundingAdds: 0,
};

describe('proofWords', () => {
  test('says what is proved of the fewest jigs, and of more', () => {
    expect(proofWords(plan, 'in')).toBe(
      'Proved: no plan of fewer jigs sets every drawer within reach of its adjusters, and none of so many leaves less to adjust.',
    );
    expect(proofWords({ ...plan, count: 11 }, 'in')).toBe(
      'Proved: no plan of so many jigs leaves less to adjust.',
    );
  });

  test('gives the bounds of a search that was cut short', () => {
    const words = proofWords({ ...plan, proof: { bound: { jigs: 8, total: INCH / 4 } } }, 'in');
    expect(words).toContain('no plan takes fewer than 8 jigs');
    expect(words).toContain('leaves less than 1/4" to adjust');
  });

  test('says what rounding adds, as the proof is of the plan before it', () => {
    expect(proofWords({ ...plan, roundingAdds: INCH / 32 }, 'in')).toMatch(
      /That is before shared overhangs were rounded to 1\/64", which costs no jig and adds 1\/32" to adjust in all\.$/,
    );
  });
});
