import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { overlayOf, resolveCondition } from '../../core/rules/overlay.ts';

const SEED = 20_310_527;
const mm = fc.double({ min: 0, max: 200, noNaN: true });

describe('overlayOf', () => {
  test.each([
    [{ kind: 'inset', gap: 2 } as const, -2],
    [{ kind: 'inset', gap: 0 } as const, 0],
    [{ kind: 'lap', overlay: 12 } as const, 12],
    [{ kind: 'cover', member: 38, reveal: 2 } as const, 36],
    [{ kind: 'share', member: 38, gap: 3 } as const, 17.5],
    [{ kind: 'share', member: 38, gap: 3, neighborLap: 10 } as const, 25],
    [{ kind: 'share', member: 0, gap: 3 } as const, -1.5],
    [{ kind: 'share', member: 0, gap: 3, neighborLap: 0 } as const, -3],
  ])('overlayOf(%j) is %d', (condition, expected) => {
    expect(overlayOf(condition)).toBe(expected);
  });

  test('two fronts that share a member leave exactly the gap, split evenly or not', () => {
    fc.assert(
      fc.property(mm, mm, mm, (member, gap, lap) => {
        const even = overlayOf({ kind: 'share', member, gap });
        expect(member - 2 * even).toBeCloseTo(gap, 9);
        const own = overlayOf({ kind: 'share', member, gap, neighborLap: lap });
        expect(member - own - lap).toBeCloseTo(gap, 9);
        // What this front laps is what its neighbour must call the neighbour's lap.
        expect(overlayOf({ kind: 'share', member, gap, neighborLap: own })).toBeCloseTo(lap, 9);
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });
});

describe('resolveCondition', () => {
  const widths = {
    stile: { value: 38 },
    'shared-stile': { value: 44 },
    'top-rail': { value: 40 },
    'mid-rail': { value: 32 },
    'bottom-rail': { value: 30 },
  };

  test('resolveCondition(a condition with a named member) has the width in its place', () => {
    expect(resolveCondition({ kind: 'cover', member: 'bottom-rail', reveal: 1 }, widths)).toEqual({
      kind: 'cover',
      member: 30,
      reveal: 1,
    });
    expect(
      resolveCondition({ kind: 'share', member: 'shared-stile', gap: 3, neighborLap: 5 }, widths),
    ).toEqual({
      kind: 'share',
      member: 44,
      gap: 3,
      neighborLap: 5,
    });
  });

  test('resolveCondition(a condition with a width or without a member) is the condition', () => {
    expect(resolveCondition({ kind: 'share', member: 7, gap: 3 }, widths)).toEqual({
      kind: 'share',
      member: 7,
      gap: 3,
    });
    expect(resolveCondition({ kind: 'lap', overlay: 7 }, widths)).toEqual({ kind: 'lap', overlay: 7 });
  });
});
