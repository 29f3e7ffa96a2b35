import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { circle } from '../../core/geometry/circle.ts';
import { perimeter } from '../../core/geometry/measure.ts';
import { rectangle } from '../../core/geometry/rectangle.ts';
import { roundedRectangle } from '../geometry/rounded-rectangle.ts';
import type { PathContour, Point, RingContour } from '../../core/geometry/types.ts';
import { contourProblems } from '../../core/geometry/validate.ts';
import { addTabs } from '../../core/sheets/tabs/add-tabs.ts';
import { usualTabs, type TabSettings } from '../../core/sheets/tabs/types.ts';
import { missed } from '../geometry/near.ts';
import { plate, plateRecipes } from '../geometry/plates.ts';
import { distanceToSides, sampled } from '../geometry/reference.ts';

const settings: TabSettings = { width: 6, every: 200, fromCorner: 6, kerf: 6.35, reach: 6.35 };
const plates = plateRecipes.map(plate).filter((ring) => contourProblems(ring).length === 0);

const marksOf = (outline: RingContour, given: TabSettings): readonly PathContour[] | null => {
  const { value } = addTabs(outline, given, 'marks', 'P');
  return value?.mode === 'marks' ? value.marks : null;
};
const stretchesOf = (outline: RingContour, given: TabSettings): readonly PathContour[] | null => {
  const { value } = addTabs(outline, given, 'bridges', 'P');
  return value?.mode === 'bridges' ? value.stretches : null;
};
const middleOf = ({ vertices: [a, b] }: PathContour): Point => {
  if (a === undefined || b === undefined) throw new Error('a mark has two ends');
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
};
const endsOf = ({ vertices }: PathContour): readonly [Point, Point] => {
  const [first, last] = [vertices[0], vertices.at(-1)];
  if (first === undefined || last === undefined) throw new Error('a stretch has two ends');
  return [first, last];
};

describe('addTabs', () => {
  test('marks leave the outline whole and cross it at its middle', () => {
    const outline = roundedRectangle(300, 80, 10);
    const { value, findings } = addTabs(outline, settings, 'marks', 'P');
    expect(findings).toEqual([]);
    if (value?.mode !== 'marks') throw new Error('no marks');
    expect(value.outline).toBe(outline);
    for (const mark of value.marks) {
      expect(contourProblems(mark)).toEqual([]);
      expect(missed(distanceToSides(middleOf(mark), sampled(outline, 0.001)), 0, 1e-9)).toBeNull();
      expect(missed(perimeter(mark), 2 * settings.kerf, 1e-9)).toBeNull();
    }
  });

  // 300 x 80: 760 mm round, so four of 200; 60 x 40: two at least.
  test.each([
    [300, 80, 4],
    [60, 40, 2],
    [900, 600, 15],
  ])('gives a part of %i x %i %i tabs', (width, height, count) => {
    expect(marksOf(rectangle(width, height), settings)).toHaveLength(count);
  });

  test('stands clear of corners and arcs, and tabs of each other', () => {
    fc.assert(
      fc.property(plates, fc.constantFrom('laser', 'router'), (outline, kind) => {
        const given = usualTabs(kind, kind === 'router' ? 3 : 0.2);
        const marks = marksOf(outline, given);
        if (marks === null) return;
        expect(marks.length).toBeGreaterThanOrEqual(2);
        const middles = marks.map(middleOf);
        const clear = given.fromCorner + (given.width + given.kerf) / 2;
        for (const [index, middle] of middles.entries()) {
          const [start, end] = endsOf(marks[index] ?? { kind: 'path', vertices: [] });
          for (const corner of outline.vertices) {
            // Only corners of its own side: those straight across from the mark.
            const off = (corner.x - middle.x) * (end.x - start.x) + (corner.y - middle.y) * (end.y - start.y);
            if (Math.abs(off) > 1e-6) continue;
            expect(Math.hypot(corner.x - middle.x, corner.y - middle.y)).toBeGreaterThan(clear - 1e-6);
          }
          for (const other of middles.slice(index + 1)) {
            expect(Math.hypot(other.x - middle.x, other.y - middle.y)).toBeGreaterThan(1e-3);
          }
        }
      }),
      { seed: 20_261_128, numRuns: 300 },
    );
  });

  test('bridges leave gaps as wide as the tab and the cut, and all else of the outline', () => {
    fc.assert(
      fc.property(plates, (outline) => {
        const given = usualTabs('laser', 0.2);
        const stretches = stretchesOf(outline, given);
        if (stretches === null) return;
        const gapped = given.width + given.kerf;
        const length = stretches.reduce((sum, stretch) => sum + perimeter(stretch), 0);
        expect(missed(length, perimeter(outline) - stretches.length * gapped, 1e-6)).toBeNull();
        for (const [index, stretch] of stretches.entries()) {
          expect(contourProblems(stretch)).toEqual([]);
          const [, end] = endsOf(stretch);
          const [start] = endsOf(stretches[(index + 1) % stretches.length] ?? stretch);
          expect(missed(Math.hypot(start.x - end.x, start.y - end.y), gapped, 1e-6)).toBeNull();
        }
      }),
      { seed: 20_261_129, numRuns: 300 },
    );
  });

  test('says that bridges leave the outline open', () => {
    const { findings } = addTabs(rectangle(100, 50), usualTabs('laser', 0.2), 'bridges', 'P');
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([
      ['sheets/open-outline', 'warning'],
    ]);
  });

  test.each([
    ['a circle', circle({ x: 0, y: 0 }, 40)],
    ['a part with sides too short', rectangle(20, 15)],
  ])('says that %s has no room for tabs', (_, outline) => {
    const { value, findings } = addTabs(outline, settings, 'marks', 'P');
    expect(value).toBeNull();
    expect(findings.map(({ code }) => code)).toEqual(['sheets/no-tabs']);
  });

  test('refuses settings that make no tabs', () => {
    for (const given of [{ width: 0 }, { every: 0 }, { fromCorner: -1 }, { kerf: Number.NaN }]) {
      const { value, findings } = addTabs(rectangle(90, 90), { ...settings, ...given }, 'marks', 'P');
      expect(value).toBeNull();
      expect(findings.map(({ code }) => code)).toEqual(['sheets/tabs']);
    }
  });
});
