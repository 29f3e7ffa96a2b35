import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { boundedLeastSquares, type Equation } from '../../../core/fit/dial-in/bounded-least-squares.ts';

const number = fc.double({ min: -3, max: 3, noNaN: true });

const equations = fc.array(
  fc.record({ constant: number, coefficients: fc.array(number, { minLength: 3, maxLength: 3 }) }),
  { minLength: 1, maxLength: 8 },
);

const bound = fc
  .tuple(fc.double({ min: -2, max: 0, noNaN: true }), fc.double({ min: 0, max: 2, noNaN: true }))
  .map(([least, most]) => ({ least, most }));

const squares = (rows: readonly Equation[], unknowns: readonly number[]) =>
  rows.reduce((sum, { constant, coefficients }) => {
    const off = coefficients.reduce((total, each, i) => total + each * (unknowns[i] ?? 0), constant);
    return sum + off * off;
  }, 0);

describe('boundedLeastSquares', () => {
  test.prop([equations, fc.tuple(bound, bound, bound)], { seed: 20_261_125, numRuns: 300 })(
    'keeps the bounds, and nothing on a fine grid within them is better',
    (rows, bounds) => {
      const solved = boundedLeastSquares(rows, bounds);
      for (const [index, { least, most }] of bounds.entries()) {
        expect(solved[index]).toBeGreaterThanOrEqual(least - 1e-8);
        expect(solved[index]).toBeLessThanOrEqual(most + 1e-8);
      }
      const best = squares(rows, solved);
      const steps = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1];
      const [a = [], b = [], c = []] = bounds.map(({ least, most }) =>
        steps.map((s) => least + s * (most - least)),
      );
      for (const x of a)
        for (const y of b)
          for (const z of c) expect(squares(rows, [x, y, z])).toBeGreaterThanOrEqual(best - 1e-6);
    },
  );

  test('leaves alone what the equations do not tell', () => {
    const free = { least: -Infinity, most: Infinity };
    const solved = boundedLeastSquares([{ constant: -2, coefficients: [1, 0] }], [free, free]);
    expect(solved).toEqual([expect.closeTo(2, 8), expect.closeTo(0, 12)]);
  });
});
