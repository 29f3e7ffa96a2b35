import { expect } from 'vitest';
import type { CoverPlan, Range } from '../../core/jigs/cover/types.ts';

interface Ranged {
  readonly id: string;
  readonly weight: number;
  readonly ranges: readonly Range[];
}

/** mm: SAME_LENGTH, by which a plan's overhangs may stray, and float noise. */
const NEAR = 1.001e-6;

/** A plan says the truth: all are served once, in their intervals, with the adjustment and the sums that it states. */
export function checkPlan(plan: CoverPlan, needs: readonly Ranged[]): void {
  const served = plan.jigs.flatMap(({ settings }) =>
    settings.flatMap(({ overhangs, serves }) => serves.map((one) => ({ ...one, overhangs }))),
  );
  expect(served.map(({ id }) => id).toSorted()).toEqual(needs.map(({ id }) => id).toSorted());
  expect(plan.jigs.length).toBe(plan.count);
  let total = 0;
  let largest = 0;
  for (const { id, overhangs, adjustment } of served) {
    const need = needs.find((one) => one.id === id);
    expect(need?.ranges.length).toBe(overhangs.length);
    for (const [axis, { interval, wanted }] of (need?.ranges ?? []).entries()) {
      const at = overhangs[axis] ?? Number.NaN;
      expect(at).toBeGreaterThanOrEqual(interval[0] - NEAR);
      expect(at).toBeLessThanOrEqual(interval[1] + NEAR);
      expect(adjustment[axis]).toBeCloseTo(wanted - at, 5);
      total += Math.abs(wanted - at) * (need?.weight ?? 0);
      largest = Math.max(largest, Math.abs(wanted - at));
    }
  }
  expect(plan.totalAdjustment).toBeCloseTo(total, 5);
  expect(plan.largestAdjustment).toBeCloseTo(largest, 5);
}
