import { describe, expect, test } from 'vitest';
import { letterOf } from '../../core/screw-section/letters.ts';
import { screwSection } from '../../core/screw-section/screw-section.ts';
import { shownScrews } from '../../core/screw-section/shown-screws.ts';
import type { LimitName } from '../../core/fastening/types.ts';
import { readMachine } from '../jigs/setups.ts';
import { demo } from '../pipeline/demo.ts';

const { design, workshop } = demo('harbor-library', readMachine('laser-6'), 'edge');
const { standard } = workshop;

const cases = design.fastenings.flatMap((fastening) =>
  shownScrews(fastening, standard).map((shown) => ({
    fastening,
    shown,
    sections: (['side', 'rail'] as const).map((across) =>
      screwSection(fastening, shown.place, shown.screw, standard, across),
    ),
  })),
);

describe('screwSection', () => {
  test('screwSection: has straight screws, leaning ones and ones that cannot be among its cases', () => {
    expect(cases.some(({ shown }) => shown.possible && shown.place.angle === 0)).toBe(true);
    expect(cases.some(({ shown }) => shown.possible && shown.place.angle > 20)).toBe(true);
    expect(cases.some(({ shown }) => !shown.possible && shown.cures.length > 0)).toBe(true);
  });

  test('screwSection: what is dimensioned is as long as the drawing has it', () => {
    for (const { sections, shown } of cases) {
      for (const { dimensions } of sections) {
        for (const { limit, from, to, is } of dimensions) {
          const drawn = Math.hypot(to.in - from.in, to.up - from.up);
          if (limit === 'bite' && shown.place.angle > 0) continue;
          expect(drawn).toBeCloseTo(Math.abs(is), 6);
        }
      }
    }
  });

  test('screwSection: nothing is dimensioned to where the drawing only cuts the wood off', () => {
    const cut = cases.flatMap(({ sections }) =>
      sections.flatMap(({ dimensions, extents }) =>
        dimensions.filter(({ to }) => to.in >= extents.in[1] - 1e-6).map(({ limit }) => limit),
      ),
    );
    expect(cut).toEqual([]);
  });

  test('screwSection: the tightest wood that it shows, and the head’s room, are those of the fastening', () => {
    const least = (one: (typeof cases)[number], limit: LimitName): number =>
      Math.min(
        ...one.sections.flatMap(({ dimensions }) =>
          dimensions.filter((dimension) => dimension.limit === limit).map(({ is }) => is),
        ),
      );
    const compared = cases.flatMap((one) =>
      one.shown.possible
        ? (['head to box side', 'cover'] as const).flatMap((limit) => {
            const { margins } = one.shown.place;
            const told = Math.min(...margins.filter((margin) => margin.limit === limit).map(({ is }) => is));
            return Number.isFinite(told) ? [{ told, drawn: least(one, limit) }] : [];
          })
        : [],
    );
    expect(compared.length).toBeGreaterThan(100);
    expect(compared.filter(({ told, drawn }) => Math.abs(told - drawn) > 1e-4)).toEqual([]);
  });

  test('screwSection: a failing limit is marked, and every limit that is drawn has a letter of its own', () => {
    const failing = cases.filter(({ shown }) => !shown.possible);
    for (const { sections, shown } of failing) {
      const fails = new Set(shown.place.margins.filter(({ over }) => over < -1e-6).map(({ limit }) => limit));
      const drawn = sections.flatMap(({ dimensions }) => dimensions);
      for (const limit of ['cover', 'bite'] as const) {
        if (fails.has(limit)) expect(drawn.some((one) => one.limit === limit && one.fails)).toBe(true);
      }
    }
    for (const { sections } of cases) {
      for (const section of sections) {
        const letters = [...new Set(section.dimensions.map(({ limit }) => limit))].map((limit) =>
          letterOf(section, limit),
        );
        expect(new Set(letters).size).toBe(letters.length);
        expect(letterOf(section, 'withdrawal')).toBeNull();
      }
    }
  });

  test('screwSection: left and right corners are drawn alike', () => {
    const [first] = design.fastenings;
    if (first === undefined || first.screw === null) throw new Error('the first drawer has no screw');
    const { screw, places } = first;
    const at = (hand: 'left' | 'right') => {
      const place = places.find(
        ({ corner, index }) => corner.hand === hand && corner.end === 'bottom' && index === 0,
      );
      if (place === undefined) throw new Error(`no screw at the ${hand}`);
      return screwSection(first, place, screw, standard, 'side');
    };
    const flat = (points: readonly { in: number; up: number }[]) =>
      points.map((point) => [point.in.toFixed(6), point.up.toFixed(6)].join()).toSorted();
    const [left, right] = [at('left'), at('right')];
    expect(left.dimensions.map(({ is }) => is.toFixed(6))).toEqual(
      right.dimensions.map(({ is }) => is.toFixed(6)),
    );
    expect(left.tools.map(({ outline }) => flat(outline))).toEqual(
      right.tools.map(({ outline }) => flat(outline)),
    );
  });

  test('screwSection: a bevelled front reaches to its edge at the face, and is set back by its bevel at the back', () => {
    const bevelled = cases.filter(({ fastening }) => fastening.fit.rules.backBevel.value > 0);
    expect(bevelled.length).toBeGreaterThan(0);
    for (const { fastening, sections } of bevelled) {
      const { fit } = fastening;
      const setback = fit.frontThickness * Math.tan((fit.rules.backBevel.value * Math.PI) / 180);
      for (const { shapes } of sections) {
        const front = shapes.find(({ material }) => material === 'front')?.outline ?? [];
        const outermost = (up: number) =>
          Math.min(...front.filter((point) => point.up === up).map((point) => point.in));
        expect(outermost(-fit.frontThickness)).toBeCloseTo(0, 9);
        expect(outermost(0)).toBeCloseTo(setback, 9);
      }
    }
  });
});
