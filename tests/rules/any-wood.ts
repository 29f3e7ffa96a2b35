import * as fc from 'fast-check';
import type { Air, FrontWood, Species } from '../../core/rules/wood-types.ts';
import { anyText } from './any-text.ts';

const number = (min: number, max: number) =>
  fc.record({ value: fc.double({ min, max, noNaN: true }), source: anyText });

export const anySpecies: fc.Arbitrary<Species> = fc.record({
  specificGravity: number(0.1, 1.4),
  softwood: fc.boolean(),
  radial: number(0.0005, 0.01),
  tangential: number(0.0005, 0.01),
});

/** Degrees Celsius, of whole degrees of either scale or of any digits. */
const temperature = fc.record({
  value: fc.oneof(
    fc.integer({ min: 0, max: 50 }),
    fc.integer({ min: 32, max: 122 }).map((fahrenheit) => ((fahrenheit - 32) * 5) / 9),
    fc.double({ min: 0.001, max: 50, noNaN: true }),
  ),
  source: anyText,
});

const air = (min: number, max: number): fc.Arbitrary<Air> =>
  fc.record({ humidity: number(min, max), temperature });

export const anyFrontWood = (species: readonly string[]): fc.Arbitrary<FrontWood> =>
  fc.record<FrontWood>({
    species: fc.record({ value: fc.constantFrom(...species), source: anyText }),
    slab: fc.record({ value: fc.constantFrom('solid' as const, 'panel' as const), source: anyText }),
    grain: fc.record({ value: fc.constantFrom('horizontal' as const, 'vertical' as const), source: anyText }),
    sawn: fc.record({
      value: fc.constantFrom('flatsawn' as const, 'quartersawn' as const),
      source: anyText,
    }),
    dry: air(1, 30),
    damp: air(60, 100),
    shop: air(30, 60),
  });
