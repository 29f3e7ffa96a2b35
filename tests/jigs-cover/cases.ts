import { fc } from '@fast-check/vitest';
import type { CornerNeed, Need, Range, SideNeed } from '../../core/jigs/cover/types.ts';
import type { Box } from './brute-force.ts';

/** A range of whole millimetres from 0 to `to`, what is wanted within it or beyond an end. */
const range = (to: number, longest: number): fc.Arbitrary<Range> =>
  fc
    .record({ lo: fc.nat(to), length: fc.nat(longest), wanted: fc.integer({ min: -1, max: longest + 1 }) })
    .map(({ lo, length, wanted }) => ({
      interval: [lo, Math.min(lo + length, to)],
      wanted: Math.min(Math.max(lo + wanted, 0), to),
    }));

const weight = fc.integer({ min: 1, max: 4 });

export const edges = (to: number, longest: number, maxLength: number): fc.Arbitrary<readonly Need[]> =>
  fc
    .array(fc.record({ weight, range: range(to, longest) }), { minLength: 1, maxLength })
    .map((list) => list.map(({ weight, range }, index) => ({ id: `d${index}`, weight, ...range })));

export const sides = (to: number, longest: number, maxLength: number): fc.Arbitrary<readonly SideNeed[]> =>
  fc
    .array(fc.record({ weight, range: range(to, longest), alone: fc.nat(5) }), { minLength: 1, maxLength })
    .map((list) =>
      list.map(({ weight, range, alone }, index) => ({
        id: `d${index}`,
        weight,
        ...range,
        alone: alone === 0,
      })),
    );

export const corners = (
  to: number,
  longest: number,
  maxLength: number,
): fc.Arbitrary<readonly CornerNeed[]> =>
  fc
    .array(fc.record({ weight, bottom: range(to, longest), side: range(to, longest) }), {
      minLength: 1,
      maxLength,
    })
    .map((list) => list.map((corner, index) => ({ id: `d${index}`, ...corner })));

const axisOf = ({ interval: [lo, hi], wanted }: Range) => ({ lo, hi, wanted });

export const boxOfEdge = (need: Need): Box => ({ weight: need.weight, axes: [axisOf(need)] });

export const boxOfCorner = ({ weight, bottom, side }: CornerNeed): Box => ({
  weight,
  axes: [axisOf(bottom), axisOf(side)],
});
