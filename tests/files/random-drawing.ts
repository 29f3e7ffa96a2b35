import * as fc from 'fast-check';
import type { Drawing } from '../../core/files/drawing.ts';
import type { Contour } from '../../core/geometry/types.ts';
import { segmentsOf, turnBetween } from '../../core/geometry/segments.ts';
import { translate } from '../../core/geometry/transform.ts';
import { contourProblems } from '../../core/geometry/validate.ts';
import { OPERATIONS } from '../../core/machine/operations.ts';
import type { Feature } from '../../core/parts/types.ts';
import { LAYERS } from './sample-drawing.ts';

const size = fc.double({ min: 0.5, max: 20, noNaN: true });
/** Of an arc at least 4.6° long: two flatter ones between the same ends would lie on each other. */
const bulge = fc.oneof(
  fc.constantFrom(0, 1, -1, Math.SQRT2 - 1, 1 - Math.SQRT2),
  fc.double({ min: 0.02, max: 1, noNaN: true }),
  fc.double({ min: -1, max: -0.02, noNaN: true }),
);

const circles: fc.Arbitrary<Contour> = size.map((radius) => ({
  kind: 'circle',
  center: { x: 0, y: 0 },
  radius,
}));

/** Whether no segment goes back along the one before it: about a cusp, two segments lie on each other. */
function hasNoCusp(contour: Contour): boolean {
  const segments = segmentsOf(contour);
  return segments.every((segment, index) => {
    const next = segments[index + 1] ?? (contour.kind === 'ring' ? segments[0] : undefined);
    return next === undefined || Math.abs(turnBetween(segment, next)) < 3;
  });
}

/** Rings of any corners about a middle, with any bulges, kept if they don't cross themselves. */
const rings: fc.Arbitrary<Contour> = fc
  .array(fc.record({ radius: size, bulge }), { minLength: 3, maxLength: 12 })
  .map((corners) => ({
    kind: 'ring' as const,
    vertices: corners.map((corner, index) => ({
      x: corner.radius * Math.cos((2 * Math.PI * index) / corners.length),
      y: corner.radius * Math.sin((2 * Math.PI * index) / corners.length),
      bulge: corner.bulge,
    })),
  }))
  .filter((ring) => contourProblems(ring).length === 0 && hasNoCusp(ring));

/** Two corners with an arc out and an arc back. */
const lenses: fc.Arbitrary<Contour> = fc
  .tuple(size, fc.double({ min: 0.02, max: 1, noNaN: true }), fc.double({ min: 0.02, max: 1, noNaN: true }))
  .map(([length, out, back]) => ({
    kind: 'ring',
    vertices: [
      { x: 0, y: 0, bulge: out },
      { x: length, y: 0, bulge: back },
    ],
  }));

const paths: fc.Arbitrary<Contour> = fc
  .array(fc.record({ x: size, y: size, bulge }), { minLength: 2, maxLength: 8 })
  .map((points) => ({ kind: 'path' as const, vertices: points }))
  .filter((path) => contourProblems(path).length === 0 && hasNoCusp(path));

const features: fc.Arbitrary<Feature> = fc.oneof(
  paths.map((contour): Feature => ({ operation: 'engrave', contour })),
  fc
    .tuple(fc.constantFrom(...OPERATIONS), fc.oneof(circles, rings, lenses))
    .map(([operation, contour]): Feature => ({ operation, contour })),
);

/** Drawings of up to 12 contours, each in a field of its own 100 mm wide, somewhere within some metres. */
export const randomDrawings: fc.Arbitrary<Drawing> = fc
  .tuple(
    fc.array(features, { minLength: 1, maxLength: 12 }),
    fc.record({
      x: fc.double({ min: -3000, max: 3000, noNaN: true }),
      y: fc.double({ min: -3000, max: 3000, noNaN: true }),
    }),
  )
  .map(([drawn, at]) => ({
    layers: LAYERS,
    features: drawn.map((feature, index) => ({
      ...feature,
      contour: translate(feature.contour, { x: at.x + 100 * index, y: at.y }),
    })),
  }));
