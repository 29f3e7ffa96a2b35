import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { circle } from '../../core/geometry/circle.ts';
import { perimeter, signedArea } from '../../core/geometry/measure.ts';
import { mirrorX } from '../../core/geometry/mirror.ts';
import { clockwise, counterClockwise, reverseRing } from '../../core/geometry/orient.ts';
import { rectangle } from '../../core/geometry/rectangle.ts';
import { rotate, translate } from '../../core/geometry/transform.ts';
import type { PathContour, RingContour } from '../../core/geometry/types.ts';
import { contourProblems } from '../../core/geometry/validate.ts';
import { missed, worstMiss } from './near.ts';
import { plate, plateRecipes } from './plates.ts';
import { distanceToSides, pointsOn, sampled } from './reference.ts';

const SEED = 20_260_206;
const plates = plateRecipes.map(plate).filter((ring) => contourProblems(ring).length === 0);
const number = fc.double({ min: -500, max: 500, noNaN: true });

/** How far two rings are apart, corner by corner. */
const apart = (a: RingContour, b: RingContour): readonly number[] =>
  a.vertices.flatMap((vertex, index) => {
    const other = b.vertices[index];
    return other === undefined
      ? [Infinity]
      : [vertex.x - other.x, vertex.y - other.y, vertex.bulge - other.bulge];
  });

describe('rotate and translate', () => {
  test('rotate(random plates, any angle) keeps area, perimeter and every bulge', () => {
    fc.assert(
      fc.property(plates, number, number, number, (ring, degrees, x, y) => {
        const turned = translate(rotate(ring, degrees, { x, y }), { x: y, y: x });
        const size = 1 + Math.abs(signedArea(ring));
        expect(missed(signedArea(turned), signedArea(ring), 1e-9 * size, 'area')).toBeNull();
        expect(missed(perimeter(turned), perimeter(ring), 1e-9 * size, 'perimeter')).toBeNull();
        expect(turned.vertices.map(({ bulge }) => bulge)).toEqual(ring.vertices.map(({ bulge }) => bulge));
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test('rotate(contour, 90) is exact and counter-clockwise', () => {
    expect(rotate(rectangle(100, 40), 90).vertices.map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [0, 100],
      [-40, 100],
      [-40, 0],
    ]);
    expect(rotate(circle({ x: 2, y: 0 }, 1), 180, { x: 1, y: 0 })).toEqual(circle({ x: 0, y: 0 }, 1));
  });
});

describe('mirrorX', () => {
  test('mirrorX(random plates, twice) is the identity', () => {
    fc.assert(
      fc.property(plates, number, (ring, axis) => {
        const twice = mirrorX(mirrorX(ring, axis), axis);
        expect(twice.vertices).toHaveLength(ring.vertices.length);
        expect(worstMiss(apart(twice, ring), 0, 1e-12, 'corner')).toBeNull();
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test('mirrorX(random plates, axis) keeps the direction and lands every arc point across the axis', () => {
    fc.assert(
      fc.property(plates, number, (ring, axis) => {
        const mirrored = mirrorX(ring, axis);
        expect(missed(signedArea(mirrored), signedArea(ring), 1e-6, 'area')).toBeNull();
        expect(contourProblems(mirrored)).toEqual([]);
        const chords = sampled(mirrored, 1e-5);
        const strays = pointsOn(ring, 3).map(({ x, y }) => distanceToSides({ x: 2 * axis - x, y }, chords));
        expect(worstMiss(strays, 0, 2e-5, 'stray')).toBeNull();
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  test('mirrorX(circle and path): a pen still starts where it did', () => {
    expect(mirrorX(circle({ x: 3, y: 4 }, 2), 5)).toEqual(circle({ x: 7, y: 4 }, 2));
    const stroke: PathContour = {
      kind: 'path',
      vertices: [
        { x: 1, y: 0, bulge: 0.5 },
        { x: 4, y: 1, bulge: 0 },
      ],
    };
    expect(mirrorX(stroke, 0)).toEqual({
      kind: 'path',
      vertices: [
        { x: -1, y: 0, bulge: -0.5 },
        { x: -4, y: 1, bulge: 0 },
      ],
    });
  });
});

describe('reverseRing', () => {
  test('reverseRing(random plates) turns the area round and keeps its first corner; twice is the identity', () => {
    fc.assert(
      fc.property(plates, (ring) => {
        const turned = reverseRing(ring);
        expect(missed(signedArea(turned), -signedArea(ring), 1e-6, 'area')).toBeNull();
        expect(turned.vertices[0]?.x).toBe(ring.vertices[0]?.x);
        expect(worstMiss(apart(reverseRing(turned), ring), 0, 0)).toBeNull();
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  test('clockwise and counterClockwise turn only what runs the other way', () => {
    const ring = rectangle(3, 2);
    expect(counterClockwise(ring)).toBe(ring);
    expect(signedArea(clockwise(ring))).toBe(-6);
    expect(clockwise(circle({ x: 0, y: 0 }, 1))).toEqual(circle({ x: 0, y: 0 }, 1));
  });
});
