import { describe, expect, test } from 'vitest';
import { rectangle } from '../../core/geometry/rectangle.ts';
import { partSizes } from '../../core/parts/part-sizes.ts';
import type { Feature } from '../../core/parts/types.ts';

const features: readonly Feature[] = [
  {
    operation: 'engrave',
    contour: {
      kind: 'path',
      vertices: [
        { x: -90, y: 0, bulge: 0 },
        { x: 400, y: 0, bulge: 0 },
      ],
    },
  },
  { operation: 'drill', contour: { kind: 'circle', center: { x: 12, y: 30 }, radius: 3 } },
  { operation: 'pocket', contour: rectangle(20, 8, { x: 40, y: 25 }), depth: 2.5 },
  { operation: 'cut-outer', contour: rectangle(100, 40, { x: 2, y: 20 }) },
];

describe('partSizes', () => {
  test('is the size of the outline alone', () => {
    expect(partSizes({ features })).toMatchObject({ origin: { x: 2, y: 20 }, width: 100, height: 40 });
  });

  test('places the middle of each hole from the left and lower extents', () => {
    expect(partSizes({ features }).holes).toEqual([
      {
        operation: 'drill',
        size: { kind: 'round', diameter: 6 },
        center: { x: 12, y: 30 },
        fromLeft: 10,
        fromBottom: 10,
        depth: null,
      },
      {
        operation: 'pocket',
        size: { kind: 'other', width: 20, height: 8 },
        center: { x: 50, y: 29 },
        fromLeft: 48,
        fromBottom: 9,
        depth: 2.5,
      },
    ]);
  });
});
