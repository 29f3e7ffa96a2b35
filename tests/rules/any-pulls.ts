import * as fc from 'fast-check';
import { comparable } from '../../core/order/cabinets.ts';
import type { PullRule } from '../../core/rules/fastening-types.ts';
import { anyLength } from '../order/arbitraries.ts';
import { anyText } from './any-text.ts';

const length = fc.record({ value: anyLength, source: anyText });

const rule: fc.Arbitrary<PullRule> = fc
  .record<PullRule>({
    holes: fc.constantFrom(1 as const, 2 as const),
    centers: fc.record({ value: fc.integer({ min: 20, max: 400 }), source: anyText }),
    holeDiameter: fc.record({ value: fc.double({ min: 2, max: 19, noNaN: true }), source: anyText }),
    height: fc.record({ from: fc.constantFrom('middle' as const, 'top' as const), distance: length }),
    pairFrom: length,
  })
  .map((own) => (own.holes === 2 ? own : { ...own, centers: { ...own.centers, value: 0 } }));

/** Sorts of pulls by names of one word, none at all included. */
export const anyPulls: fc.Arbitrary<Readonly<Record<string, PullRule>>> = fc
  .uniqueArray(fc.tuple(fc.stringMatching(/^[a-zé][A-Za-z0-9é-]{0,9}$/), rule), {
    maxLength: 3,
    selector: ([name]) => comparable(name),
  })
  .map((sorts) => Object.fromEntries(sorts));
