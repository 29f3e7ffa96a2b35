import * as fc from 'fast-check';
import { comparable } from '../../core/order/cabinets.ts';
import type { FasteningRule, StockScrew } from '../../core/rules/fastening-types.ts';
import { anyLength } from '../order/arbitraries.ts';
import { anyText } from './any-text.ts';

const length = fc.record({ value: anyLength, source: anyText });

const within = (min: number, max: number) =>
  fc.record({ value: fc.double({ min, max, noNaN: true }), source: anyText });

/** N, of whole pounds of force, of newtons, or of any digits. */
const force = fc.record({
  value: fc.oneof(
    fc.integer({ min: 1, max: 500 }).map((pounds) => pounds * 4.4482216152605),
    fc.integer({ min: 1, max: 9000 }),
    fc.double({ min: 0.01, max: 9000, noNaN: true }),
  ),
  source: anyText,
});

const screw: fc.Arbitrary<StockScrew> = fc.record({
  name: anyText,
  gauge: fc.integer({ min: 0, max: 24 }),
  head: fc.constantFrom('flat' as const, 'pan' as const, 'round washer' as const),
  diameter: within(3, 5),
  root: within(1, 2.9),
  headDiameter: within(5.1, 9),
  length: within(20, 60),
  thread: within(5, 20),
});

/** Rules that hold together. */
export const anyFastening: fc.Arbitrary<FasteningRule> = fc.record<FasteningRule>({
  stock: fc.uniqueArray(screw, { minLength: 1, maxLength: 3, selector: ({ name }) => comparable(name) }),
  bits: fc
    .uniqueArray(fc.integer({ min: 1, max: 300 }), { minLength: 1, maxLength: 5 })
    .chain((tenths) =>
      fc.tuple(
        ...tenths
          .toSorted((a, b) => a - b)
          .map((one) => fc.record({ value: fc.constant(one / 10), source: anyText })),
      ),
    ),
  cover: length,
  bite: length,
  edgeMargin: length,
  headRoom: length,
  pullRoom: length,
  driverRoom: length,
  place: fc.record({ side: length, height: length }),
  spacing: length,
  largestAngle: within(20, 60),
  angleStep: within(0.1, 20),
  holes: fc.record({
    value: fc.constantFrom('pilot through both' as const, 'clearance in the box front' as const),
    source: anyText,
  }),
  pull: force,
  safety: within(1, 50),
  driver: fc.array(fc.record({ name: anyText, radius: length, length }), { minLength: 1, maxLength: 4 }),
  guide: fc.record({
    boreFit: length,
    boreLength: within(0.5, 5),
    bushing: fc.record({ value: fc.constantFrom(0, 31), source: anyText }),
  }),
});
