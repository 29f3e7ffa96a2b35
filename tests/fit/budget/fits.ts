import { fc } from '@fast-check/vitest';
import { fitOrder } from '../../../core/fit/fit-order.ts';
import type { DrawerFit } from '../../../core/fit/types.ts';
import type { Drawer, Edge, EdgeCondition } from '../../../core/order/types.ts';
import type { ShopStandard, SlideAdjusters, Tolerance, ToleranceSource } from '../../../core/rules/types.ts';
import { drawer } from '../../rules/drawers.ts';
import { readStandard } from '../../rules/read-standard.ts';

/** A value that a test needs to be there. */
export function present<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('nothing there');
  return value;
}

export const standard = readStandard('face-frame-undermount.json');

/** The fit of one drawer alone. */
export function fitOf(given: Partial<Drawer>, of: ShopStandard = standard): DrawerFit {
  const [fit] = fitOrder({ name: 'test', unit: 'mm', drawers: [drawer(given)] }, of).value;
  if (fit === undefined) throw new Error('no fit');
  return fit;
}

const sourced = (value: number) => ({ value, source: 'test' });

/** A standard whose tolerances are these, in mm. */
export const withTolerances = (
  of: ShopStandard,
  values: Partial<Record<ToleranceSource, number>>,
  distribution?: Tolerance['distribution'],
): ShopStandard => {
  const tolerance = (source: ToleranceSource): Tolerance => ({
    source: 'test',
    value: values[source] ?? of.tolerances[source].value,
    distribution: distribution ?? of.tolerances[source].distribution,
  });
  return {
    ...of,
    tolerances: {
      opening: tolerance('opening'),
      box: tolerance('box'),
      front: tolerance('front'),
      jig: tolerance('jig'),
      seating: tolerance('seating'),
      slide: tolerance('slide'),
    },
  };
};

/** What the adjusters of every slide can do, in mm. */
export type Ranges = Partial<Record<keyof SlideAdjusters, readonly [number, number]>>;

export function withAdjusters(
  of: ShopStandard,
  ranges: Ranges,
  step = { mm: 0, name: 'turn' },
): ShopStandard {
  const slides = Object.entries(of.slides).map(([name, slide]) => {
    const adjuster = (which: keyof SlideAdjusters): SlideAdjusters['side'] => {
      const [least, most] = ranges[which] ?? [
        slide.adjusters[which].least.value,
        slide.adjusters[which].most.value,
      ];
      return {
        least: sourced(least),
        most: sourced(most),
        step: sourced(step.mm),
        stepName: step.name,
      };
    };
    const adjusters = {
      height: adjuster('height'),
      side: adjuster('side'),
      depth: adjuster('depth'),
      tilt: adjuster('tilt'),
    };
    return [name, { ...slide, adjusters }] as const;
  });
  return { ...of, slides: Object.fromEntries(slides) };
}

/** Every error has no tolerance, but for what is changed afterwards. */
export const EXACT: Record<ToleranceSource, number> = {
  opening: 0,
  box: 0,
  front: 0,
  jig: 0,
  seating: 0,
  slide: 0,
};

const condition: fc.Arbitrary<EdgeCondition> = fc.oneof(
  fc.record({ kind: fc.constant('inset' as const), gap: fc.double({ min: 1, max: 4, noNaN: true }) }),
  fc.record({ kind: fc.constant('lap' as const), overlay: fc.double({ min: 2, max: 30, noNaN: true }) }),
  fc.record({
    kind: fc.constant('share' as const),
    member: fc.double({ min: 10, max: 40, noNaN: true }),
    gap: fc.double({ min: 1, max: 5, noNaN: true }),
  }),
);

/** Drawers whose every edge is stated, with a front that may be a little off its place. */
export const anyDrawer: fc.Arbitrary<Partial<Drawer>> = fc
  .record({
    left: condition,
    right: condition,
    top: condition,
    bottom: condition,
    openingW: fc.double({ min: 250, max: 900, noNaN: true }),
    openingH: fc.double({ min: 90, max: 400, noNaN: true }),
    wider: fc.double({ min: -0.7, max: 0.7, noNaN: true }),
  })
  .map(({ openingW, openingH, wider, ...edges }) => {
    const derived = fitOf({ openingW, openingH, edges }).frontW;
    return { openingW, openingH, edges, frontW: derived + wider };
  });

/** What a standard may say of tolerances and adjusters, mm. */
export const anyTolerances = fc.record({
  opening: fc.double({ min: 0, max: 1.5, noNaN: true }),
  box: fc.double({ min: 0, max: 1.5, noNaN: true }),
  front: fc.double({ min: 0, max: 1, noNaN: true }),
  jig: fc.double({ min: 0, max: 0.5, noNaN: true }),
  seating: fc.double({ min: 0, max: 0.5, noNaN: true }),
  slide: fc.double({ min: 0, max: 1, noNaN: true }),
});

export const anyRanges = fc.record({
  height: fc.tuple(fc.double({ min: -3, max: 0, noNaN: true }), fc.double({ min: 0, max: 4, noNaN: true })),
  side: fc.tuple(fc.double({ min: -2, max: 0, noNaN: true }), fc.double({ min: 0, max: 2, noNaN: true })),
});

/** The drawer in a mirror: what is at its left is at its right. */
export const mirrored = ({ edges, ...given }: Partial<Drawer>): Partial<Drawer> => ({
  ...given,
  edges: {
    ...edges,
    ...(edges?.right === undefined ? {} : { left: edges.right }),
    ...(edges?.left === undefined ? {} : { right: edges.left }),
  },
});

export const MIRROR: Readonly<Record<Edge, Edge>> = {
  left: 'right',
  right: 'left',
  top: 'top',
  bottom: 'bottom',
};
