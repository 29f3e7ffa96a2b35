import { describe, expect, test } from 'vitest';
import { rectangle } from '../../core/geometry/rectangle.ts';
import { measureBetween } from '../../core/parts/measure-between.ts';
import { snapPoints } from '../../core/parts/snap-points.ts';
import type { Feature } from '../../core/parts/types.ts';

const told = (features: readonly Feature[]) =>
  snapPoints(features).map(({ kind, x, y }) => `${kind} ${x.toFixed(3)} ${y.toFixed(3)}`);

describe('snapPoints', () => {
  test('of a rectangle are its corners and the middles of its sides', () => {
    expect(told([{ operation: 'cut-outer', contour: rectangle(100, 40) }])).toEqual([
      'corner 0.000 0.000',
      'corner 100.000 0.000',
      'corner 100.000 40.000',
      'corner 0.000 40.000',
      'middle 50.000 0.000',
      'middle 100.000 20.000',
      'middle 50.000 40.000',
      'middle 0.000 20.000',
    ]);
  });

  test('of a circle are its centre and its four outermost points', () => {
    expect(
      told([{ operation: 'drill', contour: { kind: 'circle', center: { x: 5, y: 6 }, radius: 2 } }]),
    ).toEqual([
      'center 5.000 6.000',
      'quarter 7.000 6.000',
      'quarter 5.000 8.000',
      'quarter 3.000 6.000',
      'quarter 5.000 4.000',
    ]);
  });

  test('of an arc are its ends, its middle and its centre', () => {
    // A half disc: bulge 1 is a half circle, below the line from left to right.
    const half: Feature = {
      operation: 'cut-outer',
      contour: {
        kind: 'ring',
        vertices: [
          { x: 0, y: 0, bulge: 1 },
          { x: 10, y: 0, bulge: 0 },
        ],
      },
    };
    expect(told([half])).toEqual([
      'corner 0.000 0.000',
      'corner 10.000 0.000',
      'middle 5.000 -5.000',
      // Of the straight side the middle is the arc's centre: the place is told once.
      'middle 5.000 0.000',
    ]);
  });

  test('leaves engraved text out', () => {
    const line: Feature = {
      operation: 'engrave',
      contour: {
        kind: 'path',
        vertices: [
          { x: 0, y: 0, bulge: 0 },
          { x: 3, y: 0, bulge: 0 },
        ],
      },
    };
    expect(snapPoints([line])).toEqual([]);
  });
});

describe('measureBetween', () => {
  test('is the distance and the ways to the right and up', () => {
    expect(measureBetween({ x: 1, y: 2 }, { x: 4, y: -2 })).toEqual({ distance: 5, dx: 3, dy: -4 });
  });
});
