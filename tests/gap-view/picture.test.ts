import { test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { dialIn } from '../../core/fit/dial-in/dial-in.ts';
import { seasonDrawer } from '../../core/fit/seasons/season-drawer.ts';
import { dialTable } from '../../core/gap-view/dial-table.ts';
import { cornerGaps, frontPicture } from '../../core/gap-view/front-picture.ts';
import { seasonTable, staysPut } from '../../core/gap-view/season-table.ts';
import { readingOf, withReading } from '../../core/gap-view/with-reading.ts';
import type { Drawer } from '../../core/order/types.ts';
import type { FrontWood } from '../../core/rules/wood-types.ts';
import { anyDrawer, fitOf, present, standard, withAdjusters } from '../fit/budget/fits.ts';

describe('frontPicture', () => {
  test.prop([anyDrawer], { seed: 20_261_125, numRuns: 100 })(
    'every gap goes from the edge of the front to its member, outwards; a member that is lapped is behind the front',
    (given) => {
      const fit = fitOf(given);
      const { view, front, members, gaps } = frontPicture(fit);
      expect([front.w, front.h]).toEqual([fit.frontW, fit.frontH]);
      const shown = Object.values(fit.gaps).filter((gap) => gap !== null).length;
      expect(gaps).toHaveLength(2 * shown);
      for (const { edge, laps, from } of members) {
        const [at, side] = edge === 'left' || edge === 'right' ? [from.x, front.w] : [from.y, front.h];
        expect(laps).toBe(fit.gaps[edge] === null);
        expect(at > 0 && at < side).toBe(laps);
        expect(from.x >= view.x && from.x <= view.x + view.w).toBe(true);
        expect(from.y >= view.y && from.y <= view.y + view.h).toBe(true);
      }
      for (const { edge, corner, from, to } of gaps) {
        const member = present(members.find((one) => one.edge === edge));
        const upright = edge === 'left' || edge === 'right';
        expect(upright ? to.x : to.y).toBe(upright ? member.from.x : member.from.y);
        expect(upright ? from.y : from.x).toBe(upright ? to.y : to.x);
        const edgeAt = { left: 0, right: front.w, top: 0, bottom: front.h }[edge];
        expect(upright ? from.x : from.y).toBe(edgeAt);
        // Nearer to its own corner than to the other one of its edge.
        if (upright) expect(from.y < front.h / 2).toBe(corner.startsWith('top'));
        else expect(from.x < front.w / 2).toBe(corner.endsWith('Left'));
      }
    },
  );

  it('cornerGaps: an inset front is read at two edges of each corner', () => {
    expect(cornerGaps(frontPicture(fitOf({ style: 'inset' })))).toEqual({
      topLeft: ['left', 'top'],
      topRight: ['right', 'top'],
      bottomLeft: ['left', 'bottom'],
      bottomRight: ['right', 'bottom'],
    });
  });
});

describe('withReading', () => {
  it('puts a reading in and takes it out, the others untouched', () => {
    const one = withReading({}, 'topLeft', 'left', 2.5);
    const two = withReading(one, 'topLeft', 'top', 1);
    expect(two).toEqual({ topLeft: { side: 2.5, end: 1 } });
    expect([readingOf(two, 'topLeft', 'left'), readingOf(two, 'topRight', 'right')]).toEqual([2.5, null]);
    expect(withReading(two, 'topLeft', 'left', null)).toEqual({ topLeft: { end: 1 } });
    expect(one).toEqual({ topLeft: { side: 2.5 } });
  });
});

describe('dialTable', () => {
  it('a front that stands 1 mm to the left is told to have moved by it, place by place', () => {
    const own = withAdjusters(standard, { side: [-5, 5], height: [-5, 5] });
    const fit = fitOf({ style: 'inset', openingW: 500, openingH: 200 }, own);
    const gap = fit.gaps.left ?? NaN;
    const seen = { topLeft: { side: gap - 1 }, topRight: { side: gap + 1 }, bottomLeft: { side: gap - 1 } };
    const rows = dialTable(fit, seen, present(dialIn(seen, fit, own).value));
    expect(rows.map(({ edge, corner }) => `${edge} ${corner}`)).toEqual([
      'left topLeft',
      'right topRight',
      'left bottomLeft',
    ]);
    expect(rows.map((row) => row.seen)).toEqual([gap - 1, gap + 1, gap - 1]);
    for (const row of rows) {
      expect(row.after).toBeCloseTo(gap, 6);
      expect(row.wanted).toBe(gap);
    }
  });
});

const sourced = <T>(value: T) => ({ value, source: 'test' });
const withWood = (wood: Partial<FrontWood>) => ({
  ...standard,
  front: { ...standard.front, wood: { ...standard.front.wood, ...wood } },
});
const solid = withWood({ slab: sourced('solid'), grain: sourced('vertical') });
const seasonOf = (given: Partial<Drawer>, of = solid) => present(seasonDrawer(fitOf(given, of), of).value);
const inset = (gap: number) => {
  const edge = { kind: 'inset', gap } as const;
  return { openingW: 900, openingH: 200, edges: { left: edge, right: edge, top: edge, bottom: edge } };
};

describe('seasonTable', () => {
  it('a solid front with upright grain closes its side gaps in damp air and opens them in dry air', () => {
    const season = seasonOf(inset(3));
    expect(staysPut(season)).toBe(false);
    const rows = seasonTable(season, 'mm');
    const [left, right, top] = rows;
    expect(rows).toHaveLength(4);
    expect(left?.fitted).toBe(3);
    expect(left?.damp).toBeLessThan(3);
    expect(left?.dry).toBeGreaterThan(3);
    expect([top?.dry, top?.damp]).toEqual([3, 3]);
    // What the front grows is what both gaps lose.
    expect((left?.damp ?? NaN) + (right?.damp ?? NaN)).toBeCloseTo(
      6 - (season.damp.frontW - season.fit.frontW),
      9,
    );
  });

  it.for(['in', 'mm'] as const)(
    'the gap that it recommends stays large enough once fitted, in %s',
    (unit) => {
      const narrow = seasonTable(seasonOf(inset(1)), unit)[0]?.recommended ?? NaN;
      expect(narrow).toBeGreaterThan(1);
      const step = unit === 'in' ? 25.4 / 64 : 0.1;
      expect(Math.abs(narrow / step - Math.round(narrow / step))).toBeLessThan(1e-6);
      const wider = seasonTable(seasonOf(inset(narrow)), unit)[0];
      expect(wider?.damp).toBeGreaterThanOrEqual(standard.limits.smallestGap.value - 1e-6);
      expect(wider?.recommended).toBeNull();
    },
  );

  it('staysPut: a panel keeps its gaps', () => {
    expect(staysPut(seasonOf(inset(1), withWood({ slab: sourced('panel') })))).toBe(true);
  });
});
