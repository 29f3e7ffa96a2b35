import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { seasonDrawer } from '../../../core/fit/seasons/season-drawer.ts';
import type { SeasonBudget } from '../../../core/fit/seasons/types.ts';
import type { DrawerFit } from '../../../core/fit/types.ts';
import { EDGES, type Drawer } from '../../../core/order/types.ts';
import type { ShopStandard } from '../../../core/rules/types.ts';
import type { FrontWood } from '../../../core/rules/wood-types.ts';
import { fitOf, standard } from '../budget/fits.ts';

const sourced = <T>(value: T) => ({ value, source: 'test' });
const air = (humidity: number) => ({ humidity: sourced(humidity), temperature: sourced(21.11) });

function withWood(wood: Partial<FrontWood>): ShopStandard {
  return { ...standard, front: { ...standard.front, wood: { ...standard.front.wood, ...wood } } };
}

/** Solid slabs with upright grain, in the three airs of Table 4-2 at 70 °F: 25 % 5.4, 40 % 7.7, 60 % 11.0. */
const solid = withWood({
  slab: sourced('solid'),
  grain: sourced('vertical'),
  dry: air(25),
  shop: air(40),
  damp: air(60),
});

const fitted = (given: Partial<Drawer>, of = solid): DrawerFit => fitOf({ style: 'inset', ...given }, of);

function seasons(fit: DrawerFit, of = solid): SeasonBudget {
  const { value } = seasonDrawer(fit, of);
  if (value === null) throw new Error('no seasons');
  return value;
}

const grown = ({ fit, damp, dry }: SeasonBudget) => ({
  damp: [damp.frontW - fit.frontW, damp.frontH - fit.frontH],
  dry: [dry.frontW - fit.frontW, dry.frontH - fit.frontH],
});

describe('seasonDrawer', () => {
  it('a solid slab grows across its grain by what the handbook gives', () => {
    // Hard maple, flatsawn, C_T 0.00353 (Table 13-5); Table 4-2 at 70 °F: 40 % 7.7, 60 % 11.0.
    const fit = fitted({ openingW: 404.7625 });
    expect(fit.frontW).toBeCloseTo(400, 9);
    const upright = grown(seasons(fit));
    // The cells have one digit: 0.1 % of moisture is 0.14 mm here.
    expect(Math.abs((upright.damp[0] ?? 0) - 400 * 0.00353 * (11 - 7.7))).toBeLessThan(0.15);
    expect(upright.damp[1]).toBe(0);
    expect(Math.abs((upright.dry[0] ?? 0) - 400 * 0.00353 * (5.4 - 7.7))).toBeLessThan(0.15);
    const own = withWood({ ...solid.front.wood, grain: sourced('horizontal') });
    const level = grown(seasons(fit, own));
    expect(level.damp[0]).toBe(0);
    expect((level.damp[1] ?? 0) / fit.frontH).toBeCloseTo((upright.damp[0] ?? 0) / fit.frontW, 9);
  });

  it('quartersawn wood and another species move by their own coefficients', () => {
    const fit = fitted({});
    const flat = grown(seasons(fit)).damp[0] ?? 0;
    // Table 13-5: hard maple C_R 0.00165 and C_T 0.00353, black cherry C_T 0.00248.
    const quarter = grown(seasons(fit, withWood({ ...solid.front.wood, sawn: sourced('quartersawn') })))
      .damp[0];
    expect((quarter ?? 0) / flat).toBeCloseTo(0.00165 / 0.00353, 6);
    const cherry = grown(seasons(fitted({ species: 'black cherry' }))).damp[0];
    expect((cherry ?? 0) / flat).toBeCloseTo(0.00248 / 0.00353, 6);
  });

  it('a panel stays put, whatever its grain and species', () => {
    const own = withWood({ ...solid.front.wood, slab: sourced('panel') });
    const fit = fitted({ species: 'no such wood' }, own);
    const { value, findings } = seasonDrawer(fit, own);
    expect(findings).toEqual([]);
    expect(value?.damp.gaps).toEqual(fit.gaps);
    expect(value?.dry.frontH).toBe(fit.frontH);
  });

  it('a five-piece front moves by its two stiles and its two rails, also where slabs are panels', () => {
    const own = withWood({ ...solid.front.wood, slab: sourced('panel') });
    const five = (front: Extract<Drawer['front'], { kind: 'five-piece' }>) =>
      seasons(fitted({ front }, own), own);
    const even = five({ kind: 'five-piece', memberWidth: 50 });
    expect(even.moving).toEqual({ width: 100, height: 100 });
    expect(grown(even).damp[0]).toBeCloseTo(grown(even).damp[1] ?? 0, 9);
    expect(five({ kind: 'five-piece', memberWidth: 60, railWidth: 35 }).moving).toEqual({
      width: 120,
      height: 70,
    });
  });

  it('the gaps lose what the front grows; a shared gap loses it from both fronts', () => {
    const share = { kind: 'share', member: 20, gap: 3 } as const;
    const fit = fitted({ edges: { right: share } });
    const year = seasons(fit);
    const [wider = 0] = grown(year).damp;
    const loss = (edge: 'left' | 'right') => (fit.gaps[edge] ?? 0) - (year.damp.gaps[edge] ?? 0);
    expect(loss('left') + loss('right') / 2).toBeCloseTo(wider, 9);
    expect(year.damp.gaps.top).toBe(fit.gaps.top);
    const lapped = seasons(fitted({ edges: { left: { kind: 'lap', overlay: 10 } } }));
    expect(lapped.damp.gaps.left).toBeNull();
  });

  it('warns where a front binds, and recommends a gap with which it does not', () => {
    // 900 mm of hard maple grow by about 10 mm: 5 at either side, in gaps of 2.38.
    const fit = fitted({ openingW: 900 });
    const { value, findings } = seasonDrawer(fit, solid);
    expect(findings.map(({ code, at, severity }) => [code, at.column, severity])).toEqual([
      ['fit/season-bind', 'left', 'warning'],
      ['fit/season-bind', 'right', 'warning'],
    ]);
    expect(findings[0]?.message).toMatch(
      /front of hard maple binds at its left edge in damp air: it grows [\d.]+ mm past its 2.38 mm gap \(from 7\.7 % to 1[01]\.\d % moisture content\); a gap of [\d.]+ mm would not/,
    );
    const gap = value?.recommended.left ?? 0;
    const better = fitted({
      openingW: 900,
      edges: { left: { kind: 'inset', gap }, right: { kind: 'inset', gap } },
    });
    const again = seasonDrawer(better, solid);
    expect(again.findings).toEqual([]);
    expect(again.value?.damp.gaps.left).toBeGreaterThanOrEqual(standard.limits.smallestGap.value);
    // Nor is it much more than it takes.
    expect(again.value?.damp.gaps.left).toBeLessThan(standard.limits.smallestGap.value + 0.1);
  });

  it('warns of a gap that closes below the smallest without binding', () => {
    const { findings } = seasonDrawer(fitted({ openingW: 360 }), solid);
    expect(findings[0]?.message).toContain("below the shop standard's smallest of 0.794 mm");
    expect(findings[0]?.values).toMatchObject({ edge: 'left', smallest: 0.79375 });
  });

  it('says which species there are where it has not the one asked for', () => {
    const { value, findings } = seasonDrawer(fitted({ species: 'ironwood' }), solid);
    expect(value).toBeNull();
    expect(findings).toMatchObject([{ code: 'fit/species-unknown', severity: 'warning' }]);
    expect(findings[0]?.message).toContain('ironwood');
    expect(findings[0]?.message).toContain('hard maple');
  });

  const humidity = fc.integer({ min: 10, max: 85 });
  test.prop([humidity, humidity, humidity, fc.constantFrom(...Object.keys(standard.species))], {
    seed: 20_261_125,
    numRuns: 200,
  })(
    'damper air never makes a gap wider, and the air of the shop leaves it as fitted',
    (a, b, c, species) => {
      const [dry = 0, shop = 0, damp = 0] = [a, b, c].toSorted((x, y) => x - y);
      const own = withWood({ ...solid.front.wood, dry: air(dry), shop: air(shop), damp: air(damp) });
      const fit = fitted({ species, front: { kind: 'five-piece', memberWidth: 50 } }, own);
      const year = seasons(fit, own);
      for (const edge of EDGES) {
        const [inDry, gap, inDamp] = [
          year.dry.gaps[edge] ?? 0,
          fit.gaps[edge] ?? 0,
          year.damp.gaps[edge] ?? 0,
        ];
        expect(inDry).toBeGreaterThanOrEqual(gap - 1e-9);
        expect(inDamp).toBeLessThanOrEqual(gap + 1e-9);
        if (dry === shop) expect(inDry).toBeCloseTo(gap, 12);
      }
    },
  );
});
