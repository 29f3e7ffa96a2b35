import { describe, expect, test } from 'vitest';
import { budgetDrawer } from '../../../core/fit/budget/budget-drawer.ts';
import { planJigs } from '../../../core/jigs/plan.ts';
import { inWorkOrder } from '../../../core/jigs/sharing/in-work-order.ts';
import { shareJigs } from '../../../core/jigs/sharing/share-jigs.ts';
import { shareOrder } from '../../../core/jigs/sharing/share-order.ts';
import { studyJigs } from '../../../core/jigs/sharing/study-jigs.ts';
import type { SharingOf } from '../../../core/jigs/sharing/types.ts';
import { chooseSeat } from '../../../core/scene/choose-seat.ts';
import { withAdjusters } from '../../fit/budget/fits.ts';
import { solve } from '../../jigs-cover/load-solver.ts';
import { demo } from '../../pipeline/demo.ts';
import { contextOf, readMachine } from '../setups.ts';

const of = (
  order: 'harbor-library' | 'boathouse-frameless',
  registration: 'edge' | 'corner',
  machine: Parameters<typeof contextOf>[0] = 'laser-6',
): SharingOf => {
  const { design, workshop } = demo(order, readMachine(machine), registration);
  const { fits } = design;
  const unit = order === 'boathouse-frameless' ? ('mm' as const) : ('in' as const);
  return {
    fits,
    standard: workshop.standard,
    registration,
    context: { ...contextOf(machine), unit },
  };
};

/** Boxes that came out a little different, as measured ones do: overhangs up to 1.2 mm off, in steps of 0.1 mm. */
const uneven = (given: SharingOf): SharingOf => ({
  ...given,
  fits: given.fits.map((fit, place) => {
    const { left, right, top, bottom } = fit.overhang;
    const [out, down] = [((place * 5) % 13) / 10, ((place * 7) % 11) / 10];
    return {
      ...fit,
      overhang: { left: left + out, right: right + out, top: top - down, bottom: bottom + down },
    };
  }),
});

const CASES = [
  of('harbor-library', 'edge'),
  of('harbor-library', 'corner', 'laser-3'),
  of('boathouse-frameless', 'edge', 'router'),
  of('boathouse-frameless', 'corner', 'router'),
  uneven(of('harbor-library', 'edge')),
  uneven(of('boathouse-frameless', 'corner', 'router')),
];

const nameOf = ({ fits, registration }: SharingOf): string => `${fits.length} drawers, ${registration}`;

describe.each(CASES.map((given, place) => [`${place + 1}: ${nameOf(given)}`, given] as const))(
  'shareJigs of %s',
  (_, given) => {
    const plan = async () => {
      const sharing = await shareJigs(given, solve);
      return {
        sharing,
        each: planJigs(given.fits, given.registration, given.context).value,
        ...planJigs(given.fits, given.registration, given.context, undefined, sharing).value,
      };
    };

    test('is built with as many jigs as it says, no more than each distinct overhang’s own', async () => {
      const { sharing, each, jigs } = await plan();
      expect(jigs.length).toBe(sharing.count);
      expect(jigs.length).toBeLessThanOrEqual(each.jigs.length);
    });

    test('rounds what is shared to the shop’s fraction at no jig more, and nothing that a drawer has to itself', async () => {
      const exact = await shareJigs(given, solve, { step: 0 });
      const rounded = await shareJigs(given, solve);
      const step = given.context.unit === 'in' ? 25.4 / 64 : 0.5;
      expect([rounded.step, rounded.count]).toEqual([step, exact.count]);
      expect(rounded.totalAdjustment - exact.totalAdjustment).toBeCloseTo(rounded.roundingAdds, 4);
      const isMultiple = (mm: number) => Math.abs(mm / step - Math.round(mm / step)) < 1e-5;
      let multiples = 0;
      let sharing = 0;
      for (const { place, settings } of rounded.jigs) {
        for (const { overhangs, lines } of settings) {
          const fits = lines.flatMap((line) => given.fits[line] ?? []);
          const edges =
            place === 'bottom' || place === 'side'
              ? [place]
              : (['bottom', place === 'left corner' ? 'left' : 'right'] as const);
          for (const [axis, edge] of edges.entries()) {
            if (edge === 'side') continue;
            const wanted = fits.map((fit) => fit.overhang[edge]);
            const at = overhangs[axis] ?? Number.NaN;
            if (Math.max(...wanted) - Math.min(...wanted) > 1e-3) {
              sharing += 1;
              multiples += isMultiple(at) ? 1 : 0;
            } else expect(Math.abs(at - (wanted[0] ?? Number.NaN))).toBeLessThan(1e-3);
          }
        }
      }
      // Not all have a multiple within the room of every drawer.
      if (sharing > 3) expect(multiples).toBeGreaterThan(sharing / 2);
    });

    test('sets every edge that was set before, and says what it leaves to adjust', async () => {
      const { sharing, each, uses } = await plan();
      const edges = (list: typeof uses) =>
        list.map(({ fit, edge }) => `${given.fits.indexOf(fit)} ${edge}`).toSorted();
      expect(edges(uses)).toEqual(edges(each.uses));
      let total = 0;
      for (const { fit, edge, overhang, adjustment } of uses) {
        expect(fit.overhang[edge] - overhang).toBeCloseTo(adjustment, 6);
        total += Math.abs(adjustment) * fit.drawer.qty;
      }
      expect(total).toBeCloseTo(sharing.totalAdjustment, 4);
    });

    // The budget is asked again with the overhangs that the jigs really set.
    test('leaves every drawer that its own jig would bring in within reach of its adjusters', async () => {
      const { uses } = await plan();
      const options = { samples: 0, seed: 0 } as const;
      for (const fit of given.fits) {
        if (budgetDrawer(fit, given.standard, options).value?.reachableLikely !== true) continue;
        const own = uses.filter((use) => use.fit === fit);
        for (const side of own.filter(({ edge }) => edge !== 'bottom')) {
          const bottom = own.find(
            ({ edge, jig }) => edge === 'bottom' && (jig === side.jig || jig.hand === null),
          );
          const registered = side.edge === 'right' ? 'right' : 'left';
          const other = registered === 'left' ? 'right' : 'left';
          const down = -(bottom?.adjustment ?? 0);
          const hung = {
            ...fit,
            overhang: {
              ...fit.overhang,
              bottom: fit.overhang.bottom + down,
              top: fit.overhang.top - down,
              [registered]: side.overhang,
              [other]: fit.overhang[other] + side.adjustment,
            },
            rules: {
              ...fit.rules,
              startLow: { ...fit.rules.startLow, value: fit.rules.startLow.value + down },
            },
          };
          expect(budgetDrawer(hung, given.standard, { ...options, registered }).value?.reachableLikely).toBe(
            true,
          );
        }
      }
    });

    test('finds the seat of every shared jig by what it sets', async () => {
      const { uses } = await plan();
      for (const { fit, jig } of uses) {
        const own = uses.filter((use) => use.fit === fit && use.jig === jig);
        const seat = chooseSeat(jig, fit, own);
        expect(seat?.sets.map(({ edge }) => edge).toSorted()).toEqual(own.map(({ edge }) => edge).toSorted());
      }
    });

    test('keeps the uses of a drawer together in the order of work, none lost', async () => {
      const { uses } = await plan();
      const sorted = inWorkOrder(uses);
      expect(new Set(sorted)).toEqual(new Set(uses));
      const runs = sorted.filter(({ fit }, place) => sorted[place - 1]?.fit !== fit);
      expect(runs.length).toBe(new Set(uses.map(({ fit }) => fit)).size);
    });

    test('trades more jigs for less adjusting, down to nothing, and makes as many as are spent', async () => {
      const { study } = await studyJigs(given, async () => solve);
      const points = study?.points ?? [];
      const each = planJigs(given.fits, given.registration, given.context).value;
      expect(study?.each).toBe(each.jigs.length);
      for (const [place, point] of points.entries()) {
        const before = points[place - 1];
        if (before === undefined) continue;
        expect(point.jigs).toBeGreaterThan(before.jigs);
        expect(point.total).toBeLessThan(before.total);
      }
      const middle = points[Math.floor(points.length / 2)];
      if (middle === undefined) return;
      const { count, totalAdjustment } = await shareJigs(given, solve, { spend: middle.jigs });
      expect(count).toBe(middle.jigs);
      expect(totalAdjustment).toBeCloseTo(middle.total, 4);
    });

    test('needs no more jigs when the adjusters reach further', async () => {
      const counts = [];
      for (const reach of [0.5, 1.5, 3]) {
        const standard = withAdjusters(given.standard, { side: [-reach, reach], height: [0, 2 * reach] });
        counts.push((await shareJigs({ ...given, standard }, solve)).count);
      }
      expect(counts).toEqual(counts.toSorted((a, b) => b - a));
    });
  },
);

describe('shareOrder', () => {
  const given = of('boathouse-frameless', 'corner', 'router');
  const broken = () => Promise.reject(new Error('no such file'));

  test('makes what it takes and says so, where fewer jigs are asked for', async () => {
    const { value, findings } = await shareOrder(given, 1, async () => solve);
    const fewest = await shareJigs(given, solve);
    expect(value?.count).toBe(fewest.count);
    expect(findings.map(({ code }) => code)).toEqual(['jigs/too-few']);
  });

  test('gives each its own jig with a warning, where the solver is needed and cannot be loaded', async () => {
    const { value, findings } = await shareOrder(of('harbor-library', 'corner', 'laser-3'), 'fewest', broken);
    expect(value).toBeNull();
    expect(findings.map(({ code, severity }) => `${severity} ${code}`)).toEqual(['warning jigs/no-solver']);
    expect(findings[0]?.message).toContain('could not be loaded (no such file)');
    expect(await shareOrder(given, 'each', broken)).toEqual({ value: null, findings: [] });
  });
});
