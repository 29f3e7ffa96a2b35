import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { budgetDrawer } from '../../../core/fit/budget/budget-drawer.ts';
import type { DrawerFit } from '../../../core/fit/types.ts';
import { alikeRooms } from '../../../core/jigs/sharing/alike-rooms.ts';
import { jigRoom } from '../../../core/jigs/sharing/jig-room.ts';
import type { ShopStandard } from '../../../core/rules/types.ts';
import {
  anyDrawer,
  anyRanges,
  anyTolerances,
  EXACT,
  fitOf,
  present,
  standard,
  withAdjusters,
  withTolerances,
} from '../../fit/budget/fits.ts';

const hand = fc.constantFrom('left' as const, 'right' as const);
const share = fc.double({ min: 0, max: 1, noNaN: true });

/** The drawer as a jig of other overhangs hangs its front: lower by `down`, and further out on its side. */
function hungBy(fit: DrawerFit, on: 'left' | 'right', out: number, down: number): DrawerFit {
  const { left, right, top, bottom } = fit.overhang;
  const by = on === 'left' ? out : -out;
  const startLow = { ...fit.rules.startLow, value: fit.rules.startLow.value + down };
  return {
    ...fit,
    overhang: { left: left + by, right: right - by, top: top - down, bottom: bottom + down },
    rules: { ...fit.rules, startLow },
  };
}

const reachable = (fit: DrawerFit, of: ShopStandard, registered: 'left' | 'right'): boolean =>
  present(budgetDrawer(fit, of, { samples: 0, seed: 0, registered }).value).reachableLikely;

describe('alikeRooms', () => {
  test.prop([fc.array(anyDrawer, { minLength: 2, maxLength: 5 }), hand], { numRuns: 25 })(
    'gives every drawer the room that it has by itself, and those that are alike the very same',
    (given, on) => {
      const roomOf = alikeRooms(standard);
      for (const one of given) {
        const [fit, twin] = [fitOf(one), fitOf({ ...one, cabinet: 'another', qty: 3 })];
        expect(roomOf(fit, on)).toEqual(jigRoom(fit, standard, on));
        expect(roomOf(twin, on)).toBe(roomOf(fit, on));
      }
    },
  );
});

describe('jigRoom', () => {
  test.prop([anyDrawer, anyTolerances, anyRanges, hand, share, share], { numRuns: 150 })(
    'gives room in which the budget says of every front that its adjusters reach',
    (given, tolerances, ranges, on, u, v) => {
      const of = withAdjusters(withTolerances(standard, tolerances), ranges);
      const fit = fitOf(given, of);
      const { side, bottom } = jigRoom(fit, of, on);
      expect(Math.min(side.less, side.more, bottom.less, bottom.more)).toBeGreaterThanOrEqual(0);
      fc.pre(reachable(fit, of, on));
      const out = -side.less + u * (side.less + side.more);
      const down = -bottom.less + v * (bottom.less + bottom.more);
      expect(reachable(hungBy(fit, on, out, down), of, on)).toBe(true);
    },
  );

  const which = fc.constantFrom(['height' as const], ['side' as const], ['height' as const, 'side' as const]);
  test.prop([anyDrawer, anyTolerances, anyRanges, hand, share, which], { numRuns: 200 })(
    'gives no less room where either adjuster reaches further, or both',
    (given, tolerances, ranges, on, more, adjusters) => {
      const of = withTolerances(standard, tolerances);
      const wide = Object.fromEntries(
        adjusters.map((name) => [name, [ranges[name][0] - more, ranges[name][1] + more] as const]),
      );
      const fit = fitOf(given, of);
      const narrow = jigRoom(fit, withAdjusters(of, ranges), on);
      const wider = jigRoom(fit, withAdjusters(of, { ...ranges, ...wide }), on);
      for (const axis of ['side', 'bottom'] as const) {
        for (const end of ['less', 'more'] as const) {
          // A hundredth, to which ranges are drawn in: the change of the lever arms takes more of a larger room.
          expect(wider[axis][end]).toBeGreaterThanOrEqual(narrow[axis][end] - 0.01);
        }
      }
    },
  );

  const inset = (gap: number) => ({ kind: 'inset' as const, gap });
  const all = { left: inset(2), right: inset(2), top: inset(2), bottom: inset(2) };

  // Worked by hand: nothing is off, gaps of 2 may be 1 to 3, the side adjuster moves 1.5 either way. A jig that
  // is off by 2.5 leaves the gap 1 off once the adjuster is at its end.
  test('gives the adjuster and what the gap may differ, where nothing else is off', () => {
    const of = withAdjusters(withTolerances(standard, EXACT), { side: [-1.5, 1.5], height: [-2, 3] });
    const fit = fitOf({ openingW: 500, openingH: 200, edges: all }, of);
    const { side, bottom } = jigRoom(fit, of, 'left');
    expect(side.less).toBeCloseTo(2.5, 1);
    expect(side.more).toBeCloseTo(2.5, 1);
    const start = fit.rules.startLow.value;
    // The front starts low by the allowance: so much of the way up is spent, and won on the way down.
    expect(bottom.more).toBeCloseTo(3 - start + 1, 1);
    expect(bottom.less).toBeCloseTo(2 + start + 1, 1);
  });

  // Worked by hand: a height adjuster that may only raise cannot lower a front that a jig hangs too high, beyond
  // the allowance that it starts low by and what the gap may differ.
  test('keeps a bottom jig from hanging a front higher than an adjuster that only raises can mend', () => {
    const of = withAdjusters(withTolerances(standard, EXACT), { height: [0, 3] });
    const fit = fitOf({ openingW: 500, openingH: 200, edges: all }, of);
    expect(jigRoom(fit, of, 'left').bottom.less).toBeCloseTo(fit.rules.startLow.value + 1, 1);
  });

  const lap = { kind: 'lap' as const, overlay: 15 };

  test('lets a lap be off by what sizes may differ, and by the adjuster after its tolerance share', () => {
    const edges = { left: lap, right: lap, top: lap, bottom: lap };
    const without = withAdjusters(standard, { side: [0, 0], height: [0, 0] });
    const tolerance = standard.limits.sizeDifference.value;
    const fit = fitOf({ openingW: 500, openingH: 200, edges }, without);
    expect(jigRoom(fit, without, 'left').side).toEqual({ less: tolerance, more: tolerance });
    const exact = withAdjusters(withTolerances(standard, EXACT), { side: [-1, 1.5] });
    const { side } = jigRoom(fitOf({ openingW: 500, openingH: 200, edges }, exact), exact, 'left');
    // More overhang hangs the front further left: the adjuster goes right, where it has 1.5.
    expect(side.more).toBeCloseTo(tolerance + 1.5, 6);
    expect(side.less).toBeCloseTo(tolerance + 1, 6);
    const mirror = jigRoom(fitOf({ openingW: 500, openingH: 200, edges }, exact), exact, 'right').side;
    expect(mirror.more).toBeCloseTo(tolerance + 1, 6);
    expect(mirror.less).toBeCloseTo(tolerance + 1.5, 6);
  });
});
