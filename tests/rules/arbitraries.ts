import * as fc from 'fast-check';
import { comparable } from '../../core/order/cabinets.ts';
import { MEMBER_NAMES } from '../../core/order/types.ts';
import type {
  AdjusterRange,
  CabinetKind,
  EdgeRule,
  OverlayStyle,
  ShopStandard,
  SlideRule,
} from '../../core/rules/types.ts';
import { anyCondition, anyLength } from '../order/arbitraries.ts';
import { anyText } from './any-text.ts';
import { anyFastening } from './any-fastening.ts';
import { anyPulls } from './any-pulls.ts';
import { anyFrontWood, anySpecies } from './any-wood.ts';

const length = fc.record({ value: anyLength, source: anyText });

/** Lengths of which two of the first are less than one of the second. */
const thin = fc.record({ value: fc.double({ min: 0.5, max: 12, noNaN: true }), source: anyText });
const wide = fc.record({ value: fc.integer({ min: 25, max: 700 }), source: anyText });

/** A member too wide for any reveal, so that no condition covers less than nothing. */
const member = fc.record({ value: fc.integer({ min: 9950, max: 10_000 }), source: anyText });

const condition = fc.record({ value: anyCondition, source: anyText });

const edgeRule: fc.Arbitrary<EdgeRule> = fc.record({ outer: condition, shared: condition });

const style: fc.Arbitrary<OverlayStyle> = fc.record({
  name: anyText,
  edges: fc.record({ left: edgeRule, right: edgeRule, top: edgeRule, bottom: edgeRule }),
  startLow: fc.record({ outer: length, shared: length }),
  backBevel: fc.record({ value: fc.double({ min: 0.001, max: 30, noNaN: true }), source: anyText }),
});

const adjuster: fc.Arbitrary<AdjusterRange> = fc.record({
  least: fc.record({ value: anyLength.map((mm) => -mm), source: anyText }),
  most: length,
  step: fc.record({ value: fc.constant(0), source: anyText }),
  stepName: anyText,
});

const slide: fc.Arbitrary<SlideRule> = fc.record({
  runningClearance: length,
  lift: length,
  topClearance: length,
  sideMember: length,
  widthTolerance: length,
  adjusters: fc.record({ height: adjuster, side: adjuster, depth: adjuster, tilt: adjuster }),
});

const names = fc.uniqueArray(anyText, { minLength: 1, maxLength: 3, selector: comparable });

const members = fc.record({
  stile: member,
  'shared-stile': member,
  'top-rail': member,
  'mid-rail': member,
  'bottom-rail': member,
});

const kindMembers = fc
  .tuple(members, fc.subarray([...MEMBER_NAMES]))
  .map(([all, used]): CabinetKind['members'] => Object.fromEntries(used.map((name) => [name, all[name]])));

const kind = (slides: readonly string[]): fc.Arbitrary<CabinetKind> =>
  fc.record({ members: kindMembers, slide: fc.constantFrom(...slides) }, { requiredKeys: ['members'] });

const many = <T>(words: readonly string[], one: fc.Arbitrary<T>): fc.Arbitrary<readonly T[]> =>
  fc.array(one, { minLength: words.length, maxLength: words.length });

const tolerance = fc.record({
  value: anyLength,
  source: anyText,
  distribution: fc.constantFrom('normal' as const, 'uniform' as const, 'triangular' as const),
});

/** Standards with any values that hold together. */
export const anyStandard: fc.Arbitrary<ShopStandard> = fc
  .record({
    slideNames: names,
    styleNames: names,
    kindNames: fc.oneof(fc.constant([]), names),
    speciesNames: names,
  })
  .chain(({ slideNames, styleNames, kindNames, speciesNames }) =>
    fc.record<ShopStandard>({
      name: anyText,
      note: fc.string(),
      unit: fc.constantFrom('in' as const, 'mm' as const),
      construction: fc.constantFrom('face frame' as const, 'frameless' as const),
      members,
      slides: many(slideNames, slide).map((slides) => keyed(slideNames, slides)),
      slide: fc.constantFrom(...slideNames),
      styles: many(styleNames, style).map((styles) =>
        styles.map((one, index) => ({ ...one, name: styleNames[index] ?? '' })),
      ),
      cabinetKinds: many(kindNames, kind(slideNames)).map((kinds) => keyed(kindNames, kinds)),
      front: fc.record({
        thickness: wide,
        wood: anyFrontWood(speciesNames),
        groove: fc.record({ depth: length, behind: thin, width: thin }),
      }),
      box: fc.record({
        sideThickness: length,
        frontThickness: thin,
        depth: wide,
        bottom: fc.record({ thickness: length, raised: length }),
      }),
      species: many(speciesNames, anySpecies).map((species) => keyed(speciesNames, species)),
      fastening: anyFastening,
      pulls: anyPulls,
      limits: fc.record({ smallestGap: length, sizeDifference: length }),
      tolerances: fc.record({
        opening: tolerance,
        box: tolerance,
        front: tolerance,
        jig: tolerance,
        seating: tolerance,
        slide: tolerance,
      }),
    }),
  );

const keyed = <T>(keys: readonly string[], values: readonly T[]): Record<string, T> =>
  Object.fromEntries(values.map((value, index) => [keys[index] ?? '', value]));
