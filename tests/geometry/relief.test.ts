import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { signedArea } from '../../core/geometry/measure.ts';
import { clockwise, reverseRing } from '../../core/geometry/orient.ts';
import { polygon } from '../../core/geometry/polygon.ts';
import { rectangle } from '../../core/geometry/rectangle.ts';
import { relieveCorners } from '../../core/geometry/relief.ts';
import type { RingContour } from '../../core/geometry/types.ts';
import { contourProblems } from '../../core/geometry/validate.ts';
import { corners, ringWith, type Corner } from './corners.ts';
import { missed } from './near.ts';
import { distanceToSides, sampled } from './reference.ts';

const SEED = 20_260_208;
const ORIGIN = { x: 0, y: 0 };
/** What requirement BONE asks of the relief radius beyond the tool's, and of the tool's reach, mm. */
const [ROOM, REACH] = [0.05, 0.01];

/**
 * A round tool let down the bisector (+y) of a corner at the origin until it touches the outline: how far its rim
 * stays from the corner, mm. Nothing is used of core: the outline is chords, the tool tries place after place.
 */
function remainder(ring: RingContour, tool: number): number {
  const chords = sampled(ring, 2e-6);
  const step = 0.02;
  let lowest = Infinity;
  for (let height = 34; height >= tool - step / 2; height -= step) {
    const center = Math.max(height, tool);
    if (distanceToSides({ x: 0, y: center }, chords) < tool - 1e-5) break;
    lowest = center;
  }
  return lowest - tool;
}

describe('BONE', () => {
  test.each(['notch', 'hole'] as const)(
    'BONE relieveCorners(%s corner of any angle and walls): a tool 0.05 mm smaller reaches it within 0.01 mm',
    (kind) => {
      let relieved = 0;
      const tools = fc.double({ min: 0.4, max: 3.2, noNaN: true });
      fc.assert(
        fc.property(corners, tools, (corner, tool) => {
          const ring = ringWith(corner, kind);
          const { ring: cut, reliefs } = relieveCorners(ring, [ORIGIN], tool + ROOM);
          expect(reliefs).toHaveLength(1);
          expect(reliefs[0]?.reason).toBeUndefined();
          relieved += 1;
          expect(contourProblems(cut)).toEqual([]);
          expect(Math.sign(signedArea(cut))).toBe(kind === 'hole' ? -1 : 1);
          expect(missed(remainder(cut, tool), 0, REACH, 'from tool to corner')).toBeNull();
        }),
        { seed: SEED, numRuns: 60 },
      );
      expect(relieved).toBe(60);
    },
  );

  test('BONE the simulated tool does stay away where there is no relief', () => {
    const square: Corner = { opening: Math.PI / 2, bendRight: 0, bendLeft: 0 };
    // A round tool of radius r stays r (sqrt 2 - 1) off a square corner.
    const left = remainder(ringWith(square, 'notch'), 3);
    expect(missed(left, 3 * (Math.SQRT2 - 1), 0.03, 'from tool to corner')).toBeNull();
  });

  test('BONE relieveCorners(corner) cuts only within the radius of its circle and the way out of it', () => {
    fc.assert(
      fc.property(corners, fc.constantFrom('notch' as const, 'hole' as const), (corner, kind) => {
        const ring = ringWith(corner, kind);
        const { ring: cut, reliefs } = relieveCorners(ring, [ORIGIN], 2);
        const circle = reliefs[0]?.relief;
        if (circle === null || circle === undefined) throw new Error('not relieved');
        expect(circle.radius).toBe(2);
        expect(
          missed(Math.hypot(circle.center.x, circle.center.y), 2, 1e-9, 'corner on the circle'),
        ).toBeNull();
        // Every new point stays within the band that the tool sweeps on its way in.
        const before = sampled(ring, 1e-5);
        const fresh = sampled(cut, 1e-3).filter((point) => distanceToSides(point, before) > 1e-3);
        for (const { x, y } of fresh) {
          const outside = y < 2 ? Math.hypot(x, y - 2) - 2 : Math.abs(x) - 2;
          expect(outside, `(${x}, ${y})`).toBeLessThan(1e-6);
        }
        expect(Math.abs(signedArea(cut)) < Math.abs(signedArea(ring))).toBe(kind === 'notch');
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  test('BONE relieveCorners(rectangular hole, all four corners) relieves all, half a circle at each', () => {
    const hole = clockwise(rectangle(30, 20));
    const at = [ORIGIN, { x: 30, y: 0 }, { x: 30, y: 20 }, { x: 0, y: 20 }];
    const { ring, reliefs } = relieveCorners(hole, at, 3.225);
    expect(reliefs.map(({ reason }) => reason)).toEqual([undefined, undefined, undefined, undefined]);
    expect(ring.vertices).toHaveLength(8);
    // At a square corner the circle's half beyond the chord is added, and the corner's triangle is hole already:
    // pi r² / 2 - r² more hole each.
    const more = 4 * (Math.PI / 2 - 1) * 3.225 ** 2;
    expect(missed(signedArea(ring), -(600 + more), 1e-9, 'area')).toBeNull();
    expect(contourProblems(ring)).toEqual([]);
  });

  test('BONE relieveCorners(sharp corner) opens the cut along the bisector, as wide as the circle', () => {
    const sharp = ringWith({ opening: 0.6, bendRight: 0, bendLeft: 0 }, 'notch');
    const { ring } = relieveCorners(sharp, [ORIGIN], 2);
    // Arc of half a turn and two straight sides: 4 vertices in place of 1.
    expect(ring.vertices).toHaveLength(sharp.vertices.length + 3);
    expect(ring.vertices.some(({ bulge }) => Math.abs(Math.abs(bulge) - 1) < 1e-12)).toBe(true);
  });
});

describe('BONE lists what it did not relieve, and why', () => {
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
  const reasonAt = (ring: RingContour, x: number, y: number, radius: number): string | undefined => {
    const { ring: same, reliefs } = relieveCorners(ring, [{ x, y }], radius);
    expect(same).toEqual(ring);
    expect(reliefs[0]?.relief).toBeNull();
    return reliefs[0]?.reason;
  };

  test('relieveCorners(an outside corner)', () => {
    expect(reasonAt(ell, 0, 0, 3)).toMatch(/outside corner/);
    expect(reasonAt(clockwise(ell), 10, 10, 3)).toMatch(/outside corner/);
  });

  test('relieveCorners(no corner there)', () => {
    expect(reasonAt(ell, 20, 0, 3)).toMatch(/no corner there/);
  });

  test('relieveCorners(a corner that is straight or smooth)', () => {
    const split: RingContour = { kind: 'ring', vertices: [...ell.vertices, { x: 0, y: 20, bulge: 0 }] };
    expect(reasonAt(split, 0, 20, 3)).toMatch(/without a corner/);
  });

  test('relieveCorners(a side too short for the circle)', () => {
    expect(reasonAt(ell, 10, 10, 25)).toMatch(/too short/);
  });

  test('relieveCorners(a slot too narrow for the tool)', () => {
    const slot = clockwise(rectangle(5, 60));
    expect(reasonAt(slot, 0, 0, 3)).toMatch(/another edge lies within/);
  });

  test('relieveCorners(thin material behind the corner)', () => {
    // The wall behind the inside corner is 1 mm thick; a circle of 5 goes through it.
    const thin = polygon(
      [
        [9, 0],
        [60, 0],
        [60, 60],
        [50, 60],
        [50, 10],
        [10, 10],
        [10, 50],
        [9, 50],
      ].map(([x = 0, y = 0]) => ({ x, y })),
    );
    expect(reasonAt(thin, 10, 10, 5)).toMatch(/another edge lies within/);
  });

  test('relieveCorners(another cut beside the way in)', () => {
    // The sides of the relief run up at x = ±2; a saw cut from the right ends at x = 1.9, clear of the circle.
    const sharp = ringWith({ opening: 0.6, bendRight: 0, bendLeft: 0 }, 'notch');
    const cut = [
      { x: 90, y: 4, bulge: 0 },
      { x: 1.9, y: 4.2, bulge: 0 },
      { x: 90, y: 4.4, bulge: 0 },
    ];
    const beside: RingContour = {
      kind: 'ring',
      vertices: [...sharp.vertices.slice(0, 6), ...cut, ...sharp.vertices.slice(6)],
    };
    expect(contourProblems(beside)).toEqual([]);
    expect(reasonAt(beside, 0, 0, 2)).toMatch(/break through another edge/);
  });

  test('relieveCorners(two corners, one of them sound) relieves that one and lists both in order', () => {
    const { reliefs } = relieveCorners(
      ell,
      [
        { x: 40, y: 0 },
        { x: 10, y: 10 },
      ],
      3,
    );
    expect(reliefs.map(({ corner, relief }) => [corner.x, relief === null])).toEqual([
      [40, true],
      [10, false],
    ]);
  });

  test('relieveCorners(radius 0) is a programmer error', () => {
    expect(() => relieveCorners(ell, [], 0)).toThrow(RangeError);
    expect(reverseRing(ell).vertices).toHaveLength(6);
  });
});
