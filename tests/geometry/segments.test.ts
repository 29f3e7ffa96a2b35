import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { circle } from '../../core/geometry/circle.ts';
import {
  arc,
  pathOf,
  pointAt,
  ringOf,
  segmentOf,
  segmentsOf,
  turnBetween,
} from '../../core/geometry/segments.ts';
import { missed, worstMiss } from './near.ts';

const SEED = 20_260_203;
const place = fc.record({
  x: fc.double({ min: -500, max: 500, noNaN: true }),
  y: fc.double({ min: -500, max: 500, noNaN: true }),
});

describe('segmentOf', () => {
  test('segmentOf(bulge 1) is a half circle that turns left: it passes below a chord to the right', () => {
    const half = segmentOf({ x: 0, y: 0, bulge: 1 }, { x: 10, y: 0 });
    if (half.kind !== 'arc') throw new Error('not an arc');
    expect(half.center).toEqual({ x: 5, y: 0 });
    expect(half.radius).toBe(5);
    expect(missed(half.sweep, Math.PI, 1e-15)).toBeNull();
    expect(missed(pointAt(half, 0.5).y, -5, 1e-12)).toBeNull();
  });

  test('segmentOf(bulge b): the arc rises b times half its chord, and its ends lie on its circle', () => {
    const bulge = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(place, place, bulge, (from, to, b) => {
        const chord = Math.hypot(to.x - from.x, to.y - from.y);
        fc.pre(chord > 0.01 && Math.abs(b) > 0.001);
        const segment = segmentOf({ ...from, bulge: b }, to);
        if (segment.kind !== 'arc') throw new Error('not an arc');
        const { center, radius } = segment;
        const radii = [from, to, pointAt(segment, 0), pointAt(segment, 1)].map(({ x, y }) =>
          Math.hypot(x - center.x, y - center.y),
        );
        expect(worstMiss(radii, radius, 1e-9 * radius, 'radius')).toBeNull();
        // The rise is measured to the right of the chord, as a left turn bows out to the right.
        const top = pointAt(segment, 0.5);
        const rise = ((top.x - from.x) * (to.y - from.y) - (top.y - from.y) * (to.x - from.x)) / chord;
        expect(missed(rise, (b * chord) / 2, 1e-9 * radius, 'rise')).toBeNull();
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });

  test('segmentOf(a bulge below the tolerance) is a line', () => {
    expect(segmentOf({ x: 0, y: 0, bulge: 1e-9 }, { x: 10, y: 0 }).kind).toBe('line');
  });
});

describe('ringOf and pathOf', () => {
  test('ringOf(segmentsOf(ring)) is the ring', () => {
    const ring = {
      kind: 'ring' as const,
      vertices: [
        { x: 0, y: 0, bulge: 0.25 },
        { x: 10, y: 0, bulge: -0.5 },
        { x: 5, y: 9, bulge: 0 },
      ],
    };
    const { vertices } = ringOf(segmentsOf(ring));
    for (const [index, { x, y, bulge }] of vertices.entries()) {
      expect([x, y]).toEqual([ring.vertices[index]?.x, ring.vertices[index]?.y]);
      expect(missed(bulge, ring.vertices[index]?.bulge ?? Number.NaN, 1e-15, 'bulge')).toBeNull();
    }
    expect(vertices).toHaveLength(3);
  });

  test('ringOf(an arc of three quarters) is two arcs, no bulge beyond 1', () => {
    const around = arc({ x: 0, y: 0 }, 10, 0, 1.5 * Math.PI);
    const { vertices } = ringOf([around, { kind: 'line', start: around.end, end: around.start }]);
    expect(vertices).toHaveLength(3);
    expect(
      worstMiss(
        vertices.slice(0, 2).map(({ bulge }) => bulge),
        Math.tan((3 * Math.PI) / 16),
        1e-15,
      ),
    ).toBeNull();
  });

  test('pathOf(segments) ends with the last point and bulge 0', () => {
    const { vertices } = pathOf([arc({ x: 0, y: 0 }, 1, 0, Math.PI)]);
    expect(vertices).toHaveLength(2);
    expect(vertices.at(-1)?.bulge).toBe(0);
    expect(pathOf([]).vertices).toEqual([]);
  });
});

describe('segmentsOf', () => {
  test('segmentsOf(circle) is two half circles', () => {
    expect(segmentsOf(circle({ x: 1, y: 2 }, 3)).map((half) => half.kind === 'arc' && half.sweep)).toEqual([
      Math.PI,
      Math.PI,
    ]);
  });

  test('segmentsOf(path) does not close it', () => {
    const corner = { x: 0, y: 0, bulge: 0 };
    const vertices = [corner, { ...corner, x: 5 }, { ...corner, y: 5 }];
    expect(segmentsOf({ kind: 'path', vertices })).toHaveLength(2);
    expect(segmentsOf({ kind: 'ring', vertices })).toHaveLength(3);
  });
});

test('turnBetween(a line and one to its left) is positive', () => {
  const [a, b, c] = [
    { x: 0, y: 0 },
    { x: 5, y: 0 },
    { x: 5, y: 5 },
  ];
  const turn = turnBetween({ kind: 'line', start: a, end: b }, { kind: 'line', start: b, end: c });
  expect(missed(turn, Math.PI / 2, 1e-15)).toBeNull();
});
