import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { circle } from '../../core/geometry/circle.ts';
import { fillet } from '../../core/geometry/fillet.ts';
import { signedArea } from '../../core/geometry/measure.ts';
import { polygon } from '../../core/geometry/polygon.ts';
import { rectangle } from '../../core/geometry/rectangle.ts';
import { roundedRectangle } from './rounded-rectangle.ts';
import { segmentsOf, turnBetween } from '../../core/geometry/segments.ts';
import { contourProblems } from '../../core/geometry/validate.ts';
import { missed } from './near.ts';

describe('fillet', () => {
  test('fillet(corner of any angle, r) is an arc of radius r, tangent to both sides', () => {
    const angle = fc.double({ min: 0.2, max: 2.9, noNaN: true });
    fc.assert(
      fc.property(angle, fc.double({ min: 0.5, max: 3, noNaN: true }), (opening, radius) => {
        const far = 100;
        const wedge = polygon([
          { x: 0, y: 0 },
          { x: far, y: 0 },
          { x: far * Math.cos(opening), y: far * Math.sin(opening) },
        ]);
        const segments = segmentsOf(fillet(wedge, 0, radius));
        expect(segments).toHaveLength(4);
        const [rounded, after, , before] = segments;
        if (rounded?.kind !== 'arc' || after === undefined || before === undefined) throw new Error('no arc');
        expect(missed(rounded.radius, radius, 1e-9, 'radius')).toBeNull();
        // A corner of opening t turns the outline by pi - t.
        expect(missed(rounded.sweep, Math.PI - opening, 1e-9, 'sweep')).toBeNull();
        expect(missed(turnBetween(before, rounded), 0, 1e-9, 'kink before')).toBeNull();
        expect(missed(turnBetween(rounded, after), 0, 1e-9, 'kink after')).toBeNull();
      }),
      { seed: 20_260_205, numRuns: 500 },
    );
  });

  test('fillet(an inside corner, r) turns right', () => {
    const ell = polygon(
      [
        [0, 0],
        [40, 0],
        [40, 10],
        [10, 10],
        [10, 40],
        [0, 40],
      ].map(([x = 0, y = 0]) => ({ x, y })),
    );
    const rounded = fillet(ell, 3, 4);
    expect(missed(signedArea(rounded), 700 + (4 - Math.PI) * 4, 1e-9, 'area')).toBeNull();
    expect(rounded.vertices[3]?.bulge).toBeLessThan(0);
  });

  test('fillet refuses what it cannot do exactly', () => {
    const ring = rectangle(20, 10);
    expect(() => fillet(ring, 0, 10.1)).toThrow(/there are 10 and 20/);
    expect(() => fillet(ring, 9, 1)).toThrow(/no corner 9/);
    expect(() => fillet(ring, 0, 0)).toThrow(/above 0/);
    expect(() => fillet(fillet(ring, 1, 2), 1, 1)).toThrow(/not between two lines/);
  });
});

describe('shapes', () => {
  test('polygon(points either way round) runs counter-clockwise', () => {
    const corners = [
      { x: 0, y: 0 },
      { x: 0, y: 3 },
      { x: 4, y: 0 },
    ];
    expect(signedArea(polygon(corners))).toBe(6);
    expect(signedArea(polygon(corners.toReversed()))).toBe(6);
    expect(() => polygon(corners.slice(1))).toThrow(RangeError);
  });

  test.each([
    [100, 40, 5, 8],
    [100, 40, 20, 6],
    [40, 40, 20, 4],
    [100, 40, 0, 4],
  ])('roundedRectangle(%d, %d, %d) has %d segments, none of no length', (width, height, radius, count) => {
    const ring = roundedRectangle(width, height, radius, { x: -3, y: 7 });
    expect(ring.vertices).toHaveLength(count);
    expect(contourProblems(ring)).toEqual([]);
    expect(missed(signedArea(ring), width * height - (4 - Math.PI) * radius ** 2, 1e-9, 'area')).toBeNull();
  });

  test('shapes without size are programmer errors', () => {
    expect(() => rectangle(0, 5)).toThrow(RangeError);
    expect(() => rectangle(5, Number.NaN)).toThrow(RangeError);
    expect(() => circle({ x: 0, y: 0 }, -1)).toThrow(RangeError);
    expect(() => roundedRectangle(10, 5, 3)).toThrow(RangeError);
  });
});
