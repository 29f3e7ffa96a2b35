import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { ellipseArcs, ellipseSpan } from '../../core/geometry/ellipse-arcs.ts';
import { signedArea } from '../../core/geometry/measure.ts';
import type { Vertex } from '../../core/geometry/types.ts';
import { contourProblems } from '../../core/geometry/validate.ts';
import { flatten } from '../measure/outline.ts';

/** mm. What the arcs of a leaning bore are asked to keep to. */
const TOLERANCE = 0.005;

/** How far a point is from an ellipse about the origin, semi-axes a and b: the least over a fine walk round it. */
function offEllipse([x, y]: readonly [number, number], a: number, b: number): number {
  let near = Math.atan2(y / b, x / a);
  const away = (angle: number) => Math.hypot(a * Math.cos(angle) - x, b * Math.sin(angle) - y);
  for (let step = 0.1; step > 1e-9; step /= 2) {
    for (const angle of [near - step, near + step]) if (away(angle) < away(near)) near = angle;
  }
  return away(near);
}

const entity = (vertices: readonly Vertex[]) => vertices.map(({ x, y, bulge }) => [x, y, bulge] as const);

const radii = fc.double({ min: 0.5, max: 8, noNaN: true });
const leans = fc.double({ min: 0.5, max: 60, noNaN: true });
const turns = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });

describe('ellipseArcs', () => {
  property.prop([radii, leans, turns], { seed: 20_261_201, numRuns: 300 })(
    'stays within the tolerance of the exact ellipse that a plane cuts out of a slanted cylinder',
    (radius, lean, turn) => {
      const long = radius / Math.cos((lean * Math.PI) / 180);
      const along = { x: Math.cos(turn), y: Math.sin(turn) };
      const center = { x: 30, y: -12 };
      const { ring, error } = ellipseArcs({ center, long, short: radius, along }, TOLERANCE);
      expect(error).toBeLessThanOrEqual(TOLERANCE);
      const worst = Math.max(
        ...flatten(entity(ring.vertices)).map(([x, y]) => {
          const [dx, dy] = [x - center.x, y - center.y];
          return offEllipse([dx * along.x + dy * along.y, dy * along.x - dx * along.y], long, radius);
        }),
      );
      // The reader's chords are as fine as 0.0005 mm.
      expect(worst).toBeLessThanOrEqual(TOLERANCE + 1e-6);
      expect(worst).toBeLessThanOrEqual(error * 1.05 + 1e-6);
      expect(contourProblems(ring)).toEqual([]);
    },
  );

  property.prop([radii, leans], { seed: 20_261_202, numRuns: 200 })(
    'has arcs that meet without a kink, turn left, and enclose pi a b',
    (radius, lean) => {
      const long = radius / Math.cos((lean * Math.PI) / 180);
      const { ring } = ellipseArcs(
        { center: { x: 0, y: 0 }, long, short: radius, along: { x: 1, y: 0 } },
        TOLERANCE,
      );
      const { vertices } = ring;
      const direction = (index: number) => {
        const from = vertices[index % vertices.length];
        const to = vertices[(index + 1) % vertices.length];
        if (from === undefined || to === undefined) throw new Error('no arc');
        const chord = Math.atan2(to.y - from.y, to.x - from.x);
        const half = 2 * Math.atan(from.bulge);
        return { start: chord - half, end: chord + half };
      };
      for (const [index, { bulge }] of vertices.entries()) {
        expect(bulge).toBeGreaterThan(0);
        const kink = direction(index + 1).start - direction(index).end;
        expect(Math.abs(Math.atan2(Math.sin(kink), Math.cos(kink)))).toBeLessThan(1e-6);
      }
      const area = Math.PI * long * radius;
      expect(Math.abs(signedArea(ring) - area)).toBeLessThan(2 * Math.PI * long * TOLERANCE);
    },
  );

  // Reference: a cylinder of 5 mm at t from the normal cuts the face in an ellipse 5 by 5/cos t.
  test.for([
    [15, 5.1764],
    [30, 5.7735],
    [45, 7.0711],
    [60, 10.0],
  ] as const)('at %i degrees a cylinder of 5 mm is %f mm long', ([lean, length]) => {
    const { ring } = ellipseArcs(
      {
        center: { x: 0, y: 0 },
        long: 2.5 / Math.cos((lean * Math.PI) / 180),
        short: 2.5,
        along: { x: 0, y: 1 },
      },
      0.001,
    );
    const points = flatten(entity(ring.vertices));
    const span = (of: (point: readonly [number, number]) => number) =>
      Math.max(...points.map(of)) - Math.min(...points.map(of));
    expect(span(([, y]) => y)).toBeCloseTo(length, 3);
    expect(span(([x]) => x)).toBeCloseTo(5, 2);
  });

  test('throws for axes that are no ellipse', () => {
    const ellipse = { center: { x: 0, y: 0 }, long: 1, short: 2, along: { x: 1, y: 0 } };
    expect(() => ellipseSpan(ellipse, 0, 1, 0.01)).toThrow(RangeError);
  });
});
