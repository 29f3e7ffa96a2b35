import * as fc from 'fast-check';
import makerjs from 'makerjs';
import { describe, expect, test } from 'vitest';
import { circle } from '../../core/geometry/circle.ts';
import { fillet } from '../../core/geometry/fillet.ts';
import { bounds, perimeter, signedArea } from '../../core/geometry/measure.ts';
import { offsetContour } from '../../core/geometry/offset.ts';
import { reverseRing } from '../../core/geometry/orient.ts';
import { polygon } from '../../core/geometry/polygon.ts';
import { rectangle } from '../../core/geometry/rectangle.ts';
import { roundedRectangle } from './rounded-rectangle.ts';
import type { ClosedContour } from '../../core/geometry/types.ts';
import { contourProblems } from '../../core/geometry/validate.ts';
import { missed, worstMiss } from './near.ts';
import { distances, plate, plateRecipes } from './plates.ts';
import { areaOf, distanceToSides, isInside, pointsOn, referenceOffset, sampled } from './reference.ts';
import { plateOf40, roundedPlateOf40, SEVEN_POINTS, SEVEN_SIDES } from './workpieces.ts';

const SEED = 20_260_131;

const areaOfAll = (contours: readonly ClosedContour[]): number =>
  contours.reduce((total, contour) => total + signedArea(contour), 0);
const aroundAll = (contours: readonly ClosedContour[]): number =>
  contours.reduce((total, contour) => total + perimeter(contour), 0);

describe('offsetContour(convex polygon, d) obeys Steiner: area A + P d + pi d², perimeter P + 2 pi d', () => {
  // Reference values: rounded offset of a convex polygon, "rp + pi r² + D" (CGAL manual, 2D offsets).
  test('100 x 40 by 3', () => {
    const { value, findings } = offsetContour(rectangle(100, 40), 3);
    expect(findings).toEqual([]);
    expect(value).toHaveLength(1);
    expect(missed(areaOfAll(value), 4868.274334, 1e-6, 'area')).toBeNull();
    expect(missed(aroundAll(value), 298.849556, 1e-6, 'perimeter')).toBeNull();
  });

  test('triangle 3-4-5 by 1', () => {
    const triangle = polygon([
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 0, y: 3 },
    ]);
    expect(missed(areaOfAll(offsetContour(triangle, 1).value), 21.141592654, 1e-9, 'area')).toBeNull();
  });

  test('random triangles, either way round', () => {
    const place = fc.record({
      x: fc.double({ min: -100, max: 100, noNaN: true }),
      y: fc.double({ min: -100, max: 100, noNaN: true }),
    });
    const corners = fc.tuple(place, place, place);
    const distance = fc.double({ min: 0.05, max: 20, noNaN: true });
    fc.assert(
      fc.property(corners, distance, fc.boolean(), (points, d, turned) => {
        const triangle = polygon(points);
        fc.pre(signedArea(triangle) > 1 && contourProblems(triangle).length === 0);
        const { value } = offsetContour(turned ? reverseRing(triangle) : triangle, d);
        const [area, around] = [signedArea(triangle), perimeter(triangle)];
        expect(missed(areaOfAll(value), area + around * d + Math.PI * d * d, 1e-6, 'area')).toBeNull();
        expect(missed(aroundAll(value), around + 2 * Math.PI * d, 1e-6, 'perimeter')).toBeNull();
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});

describe('offsetContour', () => {
  test('offsetContour(circle, d) stays a circle, and is gone when its radius is used up', () => {
    const bore = circle({ x: 3, y: 4 }, 5);
    expect(offsetContour(bore, 0.1).value).toEqual([circle({ x: 3, y: 4 }, 5.1)]);
    expect(offsetContour(bore, -4).value).toEqual([circle({ x: 3, y: 4 }, 1)]);
    const gone = offsetContour(bore, -5);
    expect(gone.value).toEqual([]);
    expect(gone.findings.map(({ code, severity }) => [code, severity])).toEqual([
      ['geometry/offset-vanished', 'warning'],
    ]);
  });

  test('offsetContour(rectangle, below 0) keeps sharp corners', () => {
    const [inner, ...more] = offsetContour(rectangle(100, 40), -3).value;
    expect(more).toEqual([]);
    if (inner === undefined) throw new Error('nothing came back');
    expect(bounds(inner)).toEqual({ min: { x: 3, y: 3 }, max: { x: 97, y: 37 } });
    expect(missed(signedArea(inner), 94 * 34, 1e-9, 'area')).toBeNull();
  });

  test('offsetContour(ring, 0) is the ring, counter-clockwise', () => {
    const ring = rectangle(10, 5);
    expect(offsetContour(ring, 0).value).toEqual([ring]);
    expect(missed(areaOfAll(offsetContour(reverseRing(ring), 0).value), 50, 1e-12, 'area')).toBeNull();
  });

  test('offsetContour(ring, NaN) is a programmer error', () => {
    expect(() => offsetContour(rectangle(10, 5), Number.NaN)).toThrow(RangeError);
  });

  test('offsetContour(a keyhole, d) closes its mouth: the hole comes back clockwise', () => {
    // 30 x 30 with a 10 x 10 chamber that opens through a slit of 2.
    const keyhole = polygon(
      [
        [0, 0],
        [30, 0],
        [30, 30],
        [16, 30],
        [16, 20],
        [20, 20],
        [20, 10],
        [10, 10],
        [10, 20],
        [14, 20],
        [14, 30],
        [0, 30],
      ].map(([x = 0, y = 0]) => ({ x, y })),
    );
    const { value } = offsetContour(keyhole, 2);
    expect(value.map((ring) => Math.sign(signedArea(ring))).sort((a, b) => a - b)).toEqual([-1, 1]);
    // The chamber shrinks to 6 x 6, with the slit's two corners poking round into it.
    const hole = value.find((ring) => signedArea(ring) < 0);
    if (hole === undefined) throw new Error('the mouth stayed open');
    expect(bounds(hole).min.x).toBe(12);
    expect(bounds(hole).max.x).toBe(18);
  });
});

describe('GEOM', () => {
  test.each([0.075, -0.075, 3, -3])(
    'GEOM offsetContour(40 tangent segments, %d): 40 stay 40, lines and arcs alternate',
    (d) => {
      const { value, findings } = offsetContour(roundedPlateOf40(), d);
      expect(findings).toEqual([]);
      expect(value).toHaveLength(1);
      const [ring] = value;
      expect(ring?.kind === 'ring' && ring.vertices.length).toBe(40);
      expect(ring?.kind === 'ring' && ring.vertices.filter(({ bulge }) => bulge === 0).length).toBe(20);
    },
  );

  test('GEOM offsetContour(offsetContour(40 tangent segments, d), -d) is where it was', () => {
    const source = roundedPlateOf40();
    const [grown] = offsetContour(source, 2.5).value;
    if (grown === undefined) throw new Error('nothing came back');
    const [back] = offsetContour(grown, -2.5).value;
    if (back === undefined) throw new Error('nothing came back');
    const outline = sampled(source, 1e-6);
    const strays = pointsOn(back, 5).map((point) => distanceToSides(point, outline));
    expect(worstMiss(strays, 0, 1e-5, 'stray')).toBeNull();
  });

  test('GEOM offsetContour(sides cut in two) joins collinear sides and arcs of one circle', () => {
    const whole = roundedRectangle(60, 30, 8);
    const split = {
      kind: 'ring' as const,
      vertices: whole.vertices.flatMap((from, index) => {
        const to = whole.vertices[(index + 1) % whole.vertices.length] ?? from;
        if (from.bulge !== 0) return [from];
        return [from, { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2, bulge: 0 }];
      }),
    };
    expect(split.vertices.length).toBe(12);
    const [ring] = offsetContour(split, 1).value;
    expect(ring?.kind === 'ring' && ring.vertices.length).toBe(8);
  });

  test('GEOM offsetContour(sharp plate of 40, d): each outside corner gains one arc, nothing else', () => {
    // 4 rounded corners and 8 notches of 2 outside and 2 inside corners.
    const [ring] = offsetContour(plateOf40(), 1).value;
    expect(ring?.kind === 'ring' && ring.vertices.length).toBe(40 + 16);
  });
});

describe('OFF-1', () => {
  test(`OFF-1 offsetContour(2,000 random plates, seed ${SEED}): ring count, distance and area hold`, () => {
    let inDoubt = 0;
    fc.assert(
      fc.property(plateRecipes, distances, (recipe, d) => {
        const source = plate(recipe);
        fc.pre(contourProblems(source).length === 0);
        const { value, findings } = offsetContour(source, d);
        // Nothing but a part that is too thin may be said of these.
        for (const { code } of findings) expect(code).toBe('geometry/offset-vanished');
        for (const contour of value) expect(contourProblems(contour)).toEqual([]);

        const reference = referenceOffset(source, d, 0.0002);
        // Where sides just touch, the count hangs on the last digit: the reference itself changes its mind.
        const count = (by: number): number => referenceOffset(source, by, 0.0002).length;
        const doubtful = value.length !== reference.length && count(d - 0.0005) !== count(d + 0.0005);
        if (doubtful) inDoubt += 1;
        else expect(value.length, 'rings').toBe(reference.length);

        const around = aroundAll(value);
        expect(missed(areaOfAll(value), areaOf(reference), 0.001 * around + 1e-6, 'area')).toBeNull();
        const outline = sampled(source, 0.0002);
        const away = value
          .flatMap((contour) => pointsOn(contour, 4))
          .map((point) => distanceToSides(point, outline));
        expect(worstMiss(away, Math.abs(d), 0.001, 'distance to the source')).toBeNull();
      }),
      { seed: SEED, numRuns: 2000 },
    );
    expect(inDoubt, 'plates whose sides just touch').toBeLessThanOrEqual(4);
  }, 240_000); // the reference takes most of it
});

describe('OFF-2', () => {
  test.each([30, 36, 42])('OFF-2 offsetContour(seven sides, -%d) is one ring, exact', (d) => {
    const { value, findings } = offsetContour(SEVEN_SIDES, -d);
    expect(findings).toEqual([]);
    expect(value).toHaveLength(1);
    const outline = sampled(SEVEN_SIDES, 1e-6);
    const away = value.flatMap((ring) => pointsOn(ring, 8)).map((point) => distanceToSides(point, outline));
    expect(worstMiss(away, d, 1e-9, 'distance')).toBeNull();
    expect(
      missed(areaOfAll(value), areaOf(referenceOffset(SEVEN_SIDES, -d, 0.0002)), 0.1, 'area'),
    ).toBeNull();
  });

  test('OFF-2 makerjs loses the same outline at 36 mm, and only there', () => {
    const points = SEVEN_POINTS.map(({ x, y }): [number, number] => [x, y]);
    const lengths = [30, 36, 42].map((d) => {
      const outline = makerjs.model.outline(new makerjs.models.ConnectTheDots(true, points), d, 1, true);
      return outline === undefined || Object.keys(outline.models ?? {}).length === 0 ? 'empty' : 'found';
    });
    expect(lengths).toEqual(['found', 'empty', 'found']);
  });

  test('OFF-2 offsetContour(part, d) is empty exactly when the part is thinner than 2 d', () => {
    const bar = roundedRectangle(100, 10, 2);
    expect(offsetContour(bar, -4.9).value).toHaveLength(1);
    const gone = offsetContour(bar, -5.1);
    expect(gone.value).toEqual([]);
    expect(gone.findings.map(({ code }) => code)).toEqual(['geometry/offset-vanished']);
  });

  test('OFF-2 offsetContour(random plates, d) is never empty where a disc of |d| fits', () => {
    fc.assert(
      fc.property(plateRecipes, fc.double({ min: 1, max: 12, noNaN: true }), (recipe, d) => {
        const source = plate(recipe);
        fc.pre(contourProblems(source).length === 0);
        const { value } = offsetContour(source, -d);
        const outline = sampled(source, 0.01);
        // Depth of the places of a grid inside the plate: a witness, if any lies deeper than d.
        const { min, max } = bounds(source);
        let deepest = 0;
        for (let i = 1; i < 24; i += 1) {
          for (let j = 1; j < 12; j += 1) {
            const x = min.x + ((max.x - min.x) * i) / 24;
            const y = min.y + ((max.y - min.y) * j) / 12;
            if (isInside({ x, y }, outline)) deepest = Math.max(deepest, distanceToSides({ x, y }, outline));
          }
        }
        expect(value.length > 0 || deepest <= d + 0.02, `no ring, yet ${deepest} mm deep`).toBe(true);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test('OFF-2 offsetContour(one fillet more) does not change the rest', () => {
    const plain = rectangle(80, 50);
    const [a, b] = [plain, fillet(plain, 2, 10)].map((ring) => offsetContour(ring, -6).value[0]);
    if (a === undefined || b === undefined) throw new Error('nothing came back');
    // The inner corner of radius 10 - 6 = 4 takes (4 - pi) r² / 4 off the square one.
    expect(
      missed(signedArea(a) - signedArea(b), ((4 - Math.PI) / 4) * 16, 1e-9, 'area of the corner'),
    ).toBeNull();
  });
});
