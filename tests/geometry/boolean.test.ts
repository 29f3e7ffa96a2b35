import { Clipper, ClipType, FillRule, type Paths64 } from 'clipper2-ts';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { difference, intersection, union } from '../../core/geometry/boolean.ts';
import { circle } from '../../core/geometry/circle.ts';
import { signedArea } from '../../core/geometry/measure.ts';
import { clockwise } from '../../core/geometry/orient.ts';
import { rectangle } from '../../core/geometry/rectangle.ts';
import { roundedRectangle } from './rounded-rectangle.ts';
import type { ClosedContour } from '../../core/geometry/types.ts';
import { missed, worstMiss } from './near.ts';
import { areaOf, distanceToSides, isInside, pointsOn, sampled, toPath } from './reference.ts';
import { regionPairs } from './regions.ts';

const SEED = 20_260_202;

/** How many contours of a list hold a contour, told by one of its points or, for circles inside each other, centre. */
const depthIn = (contour: ClosedContour, all: readonly ClosedContour[]): number =>
  all.filter((other) => other !== contour && holds(other, contour)).length;

function holds(outer: ClosedContour, inner: ClosedContour): boolean {
  const outline = sampled(outer, 0.0002);
  const places = pointsOn(inner, 3);
  // Points on the outer one are neither in nor out: they do not vote.
  const votes = places.filter((place) => distanceToSides(place, outline) > 0.001);
  return votes.length > 0 && votes.every((place) => isInside(place, outline));
}

/** Area of a result by nesting alone: what lies in an odd number of others is a hole. */
const areaByNesting = (result: readonly ClosedContour[]): number =>
  result.reduce((total, contour) => {
    const sign = depthIn(contour, result) % 2 === 0 ? 1 : -1;
    return total + sign * Math.abs(signedArea(contour));
  }, 0);

/** Whether a circle of the list lies in another contour of it, so that it is a hole there. */
const hasNestedCircle = (contours: readonly ClosedContour[]): boolean =>
  contours.some((contour) => contour.kind === 'circle' && depthIn(contour, contours) > 0);

const referencePaths = ([plate, ...bores]: readonly ClosedContour[]): Paths64 => {
  if (plate === undefined) return [];
  const holes = bores.map((bore) => toPath(bore, 0.0002));
  return Clipper.difference([toPath(plate, 0.0002)], holes, FillRule.NonZero);
};

const OPERATIONS = [
  { name: 'difference', pairs: 2000, run: difference, clip: ClipType.Difference },
  { name: 'intersection', pairs: 500, run: intersection, clip: ClipType.Intersection },
  { name: 'union', pairs: 500, run: union, clip: ClipType.Union },
] as const;

describe('BOOL', () => {
  test.each(OPERATIONS)(
    `BOOL $name($pairs grid-snapped pairs, seed ${SEED}): area and curves hold`,
    ({ name, pairs, run, clip }) => {
      fc.assert(
        fc.property(regionPairs, ({ a, b }) => {
          fc.pre(name === 'difference' || !hasNestedCircle(b));
          const { value, findings } = run(a, b);
          // Touching at a point is true of these pairs; nothing else may be said of them.
          for (const { code } of findings) expect(code).toBe('geometry/touches');
          const cutters = b.map((contour) => toPath(contour, 0.0002));
          const wanted = areaOf(Clipper.booleanOp(clip, referencePaths(a), cutters, FillRule.NonZero));
          expect(missed(areaByNesting(value), wanted, 0.1, 'area')).toBeNull();
          const curves = [...a, ...b].map((contour) => sampled(contour, 0.0002));
          const strays = value
            .flatMap((contour) => pointsOn(contour, 4))
            .map((point) => distanceToSides(point, ...curves));
          expect(worstMiss(strays, 0, 0.001, 'stray from the input curves')).toBeNull();
        }),
        { seed: SEED, numRuns: pairs },
      );
    },
  );

  test('BOOL no arc is lost: difference(plate, circle across its edge) has 5 lines and arcs of 4 mm', () => {
    const { value } = difference([rectangle(40, 20)], [circle({ x: 20, y: 20 }, 4)]);
    expect(value).toHaveLength(1);
    const [ring] = value;
    if (ring?.kind !== 'ring') throw new Error('no ring came back');
    expect(ring.vertices.filter(({ bulge }) => bulge === 0)).toHaveLength(5);
    expect(missed(signedArea(ring), 800 - 8 * Math.PI, 1e-9, 'area')).toBeNull();
  });
});

describe('difference', () => {
  const plate = rectangle(100, 60);

  test('difference(plate, circle inside) keeps the circle a circle', () => {
    const bore = circle({ x: 30, y: 30 }, 5);
    expect(difference([plate], [bore]).value).toEqual([expect.objectContaining({ kind: 'ring' }), bore]);
  });

  test('difference(plate with hole, slot far from it) leaves the hole untouched', () => {
    const bore = circle({ x: 30, y: 30 }, 5);
    const { value } = difference([plate, bore], [rectangle(10, 10, { x: 90, y: 50 })]);
    expect(value).toContainEqual(bore);
    expect(missed(areaByNesting(value), 6000 - 25 * Math.PI - 100, 1e-9, 'area')).toBeNull();
  });

  test('difference(plate, slot inside) gives the slot as a clockwise hole, its four lines and arcs exact', () => {
    const slot = roundedRectangle(30, 6, 3, { x: 10, y: 10 });
    const { value } = difference([plate], [slot]);
    expect(value).toEqual([expect.objectContaining({ kind: 'ring' }), clockwise(slot)]);
  });

  test('difference(plate, cutter on its edge line) shares no sliver', () => {
    const { value, findings } = difference([plate], [rectangle(20, 15, { x: 40, y: 45 })]);
    expect(findings).toEqual([]);
    expect(value).toHaveLength(1);
    expect(value[0]?.kind === 'ring' && value[0].vertices).toHaveLength(8);
    expect(missed(areaByNesting(value), 6000 - 300, 1e-9, 'area')).toBeNull();
  });

  test('difference(plate, a drill inside a slot) still cuts the whole slot', () => {
    const slot = rectangle(30, 10, { x: 20, y: 20 });
    const drill = circle({ x: 35, y: 25 }, 3);
    expect(missed(areaByNesting(difference([plate], [slot, drill]).value), 5700, 1e-9, 'area')).toBeNull();
  });

  test('difference(plate, itself) is nothing', () => {
    expect(difference([plate], [plate])).toEqual({ value: [], findings: [] });
  });

  test('difference(plate, cutter through the middle) gives two counter-clockwise rings', () => {
    const { value } = difference([plate], [rectangle(10, 80, { x: 45, y: -10 })]);
    expect(value.map(signedArea).map(Math.round)).toEqual([2700, 2700]);
  });

  test('difference(plate, two cutters that leave parts touching at a corner) says so', () => {
    const { value, findings } = difference([plate], [rectangle(50, 30), rectangle(50, 30, { x: 50, y: 30 })]);
    expect(missed(areaByNesting(value), 3000, 1e-9, 'area')).toBeNull();
    // Two rings that share a corner, not one that passes it twice.
    expect(value).toHaveLength(2);
    expect(findings.map(({ code, values }) => [code, values])).toEqual([
      ['geometry/touches', { x: 50, y: 30 }],
    ]);
  });

  test('difference(plate, hole whose corner touches the edge) warns that it touches', () => {
    const { findings } = difference(
      [plate],
      [
        {
          kind: 'ring',
          vertices: [
            { x: 50, y: 0, bulge: 0 },
            { x: 60, y: 20, bulge: 0 },
            { x: 40, y: 20, bulge: 0 },
          ],
        },
      ],
    );
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([['geometry/touches', 'warning']]);
  });
});

describe('union and intersection', () => {
  test('union(two overlapping circles) is two arcs, intersection the lens between them', () => {
    const [a, b] = [circle({ x: 0, y: 0 }, 10), circle({ x: 12, y: 0 }, 10)];
    // Lens of two circles of radius r at distance c: 2 r² acos(c / 2r) - c / 2 sqrt(4r² - c²) (circular segments).
    const lens = 2 * 100 * Math.acos(0.6) - 6 * Math.sqrt(400 - 144);
    expect(missed(areaByNesting(intersection([a], [b]).value), lens, 1e-9, 'lens')).toBeNull();
    expect(missed(areaByNesting(union([a], [b]).value), 200 * Math.PI - lens, 1e-9, 'union')).toBeNull();
    const [outline] = union([a], [b]).value;
    // Each arc is more than half a circle, so it is exported as two.
    expect(outline?.kind === 'ring' && outline.vertices).toHaveLength(4);
  });

  test('union(plates that share an edge) is one ring without the edge', () => {
    const { value } = union([rectangle(10, 10)], [rectangle(5, 10, { x: 10, y: 0 })]);
    expect(value).toHaveLength(1);
    expect(value[0]?.kind === 'ring' && value[0].vertices).toHaveLength(4);
  });

  test('union(far apart) keeps both, intersection nothing', () => {
    const [a, b] = [rectangle(10, 10), circle({ x: 50, y: 0 }, 3)];
    expect(union([a], [b]).value).toEqual([a, b]);
    expect(intersection([a], [b]).value).toEqual([]);
  });
});
