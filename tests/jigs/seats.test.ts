import { describe, expect, test } from 'vitest';
import { bounds } from '../../core/geometry/measure.ts';
import type { Point } from '../../core/geometry/types.ts';
import { bottomFence } from '../../core/jigs/kinds/bottom-fence.ts';
import { cornerFence } from '../../core/jigs/kinds/corner-fence.ts';
import { sideSpacer } from '../../core/jigs/kinds/side-spacer.ts';
import { stepProfile } from '../../core/jigs/kinds/step-profile.ts';
import type { Jig, JigKind, Pose, Seat, Setup, Vec3 } from '../../core/jigs/types.ts';
import { contextOf, MACHINE_NAMES, setup } from './setups.ts';

const side = (given: Partial<Setup> = {}): Setup =>
  setup({ edge: 'left', overhang: 36.5125, edgeLength: 150, ...given });

/** What each kind is tried with. */
const CASES: readonly { readonly name: string; readonly kind: JigKind; readonly setups: readonly Setup[] }[] =
  [
    { name: 'a bottom fence', kind: bottomFence, setups: [setup()] },
    { name: 'a bottom fence on a bevelled edge', kind: bottomFence, setups: [setup({ backBevel: 3 })] },
    { name: 'a side spacer', kind: sideSpacer, setups: [side()] },
    { name: 'a side spacer of two widths', kind: sideSpacer, setups: [side(), side({ overhang: 22.225 })] },
    { name: 'a step profile', kind: stepProfile, setups: [side({ overhang: 2.38125 })] },
    { name: 'a step profile of no step', kind: stepProfile, setups: [side({ overhang: 0 })] },
    { name: 'a step profile for a proud box', kind: stepProfile, setups: [side({ overhang: -3 })] },
    {
      name: 'a step profile on a bevelled edge',
      kind: stepProfile,
      setups: [side({ overhang: 2, backBevel: 3 })],
    },
    { name: 'a step profile for a bottom edge', kind: stepProfile, setups: [setup({ overhang: 8 })] },
    { name: 'a right corner fence', kind: cornerFence, setups: [setup(), side({ edge: 'right' })] },
    { name: 'a left corner fence', kind: cornerFence, setups: [setup(), side({ edge: 'left' })] },
    {
      name: 'a corner fence on bevelled edges',
      kind: cornerFence,
      setups: [setup({ backBevel: 3 }), side({ backBevel: 3 })],
    },
  ];

// The solid of the front and the box, told afresh here from the drawing of the design, apart from the jigs' code.

/** mm. Contacts touch to this; nothing reaches in deeper. */
const TOUCH = 1e-6;

const at = (pose: Pose, { x, y }: Point, height: number): Vec3 => {
  const { u, v, origin } = pose;
  const w = { x: u.y * v.z - u.z * v.y, y: u.z * v.x - u.x * v.z, z: u.x * v.y - u.y * v.x };
  return {
    x: origin.x + x * u.x + y * v.x + height * w.x,
    y: origin.y + x * u.y + y * v.y + height * w.y,
    z: origin.z + x * u.z + y * v.z + height * w.z,
  };
};

/** How far the front's edge has come in from the face's outline at a height z (0 is the back, below is wood). */
const setbackAt = (z: number, { frontThickness, backBevel }: Setup): number =>
  (frontThickness + z) * Math.tan((backBevel * Math.PI) / 180);

/** Distances inwards from the edges that a seat registers on. */
function inwards(seat: Seat, hand: Jig['hand'], point: Vec3): readonly number[] {
  if (seat.frame === 'edge') return [point.y];
  return [point.y, hand === 'left' ? -point.x : point.x];
}

/** How deep a point lies in the front; negative outside. */
function inFront(seat: Seat, jig: Jig, setups: readonly Setup[], point: Vec3): number {
  const [first] = setups;
  if (first === undefined) return NaN;
  const setback = setbackAt(point.z, first);
  const depths = inwards(seat, jig.hand, point).map((inside) => inside - setback);
  return Math.min(...depths, -point.z, point.z + first.frontThickness);
}

/** How deep a point lies in the box; negative outside. */
function inBox(seat: Seat, jig: Jig, point: Vec3): number {
  const depths = inwards(seat, jig.hand, point).map(
    (inside, index) => inside - (seat.sets[index]?.overhang ?? NaN),
  );
  return Math.min(...depths, point.z);
}

/** Points of a piece's outline and inside of it, on both faces and between them. */
function samples(
  jig: Jig,
  name: string,
  thickness: number,
): readonly { readonly point: Point; readonly height: number }[] {
  const piece = jig.pieces.find((one) => one.name === name);
  if (piece === undefined) throw new Error(`no piece ${name}`);
  const points = piece.outline.vertices.flatMap((vertex, index, all) => {
    const next = all[(index + 1) % all.length] ?? vertex;
    return [0, 0.25, 0.5, 0.75].map((part) => ({
      x: vertex.x + part * (next.x - vertex.x),
      y: vertex.y + part * (next.y - vertex.y),
    }));
  });
  return points.flatMap((point) => [0, 0.5, 1].map((part) => ({ point, height: part * thickness })));
}

for (const machine of MACHINE_NAMES) {
  const context = contextOf(machine);
  const { thickness } = context.machine.sheet;

  describe(`the seat on ${machine}`, () => {
    for (const { name, kind, setups } of CASES) {
      const refusal = kind.refuses(setups, context);
      if (refusal !== null) {
        test(`${name} is refused with a reason`, () => {
          expect(refusal).toMatch(/^[a-z].{20,}/);
        });
        continue;
      }
      const jig = kind.build('T1', setups, context);

      test(`${name} touches every face that it registers on`, () => {
        for (const seat of jig.seats) {
          expect(seat.contacts.map(({ on }) => on)).toEqual(expect.arrayContaining(['front edge', 'box']));
          for (const { piece, on, line } of seat.contacts) {
            for (const { pose } of seat.poses.filter((placed) => placed.piece === piece)) {
              if (on === 'front back') {
                const points = line ?? [{ x: 0, y: 0 }];
                for (const point of points) {
                  // The lower face, or the upper one of a block that is turned over.
                  const depths = [0, thickness].map((height) => Math.abs(at(pose, point, height).z));
                  expect(Math.min(...depths)).toBeLessThan(TOUCH);
                }
                continue;
              }
              for (const point of line ?? []) {
                const heights = [0, thickness].map((height) => at(pose, point, height));
                const depths = heights.map((place) =>
                  on === 'box'
                    ? inwards(seat, jig.hand, place).map(
                        (inside, index) => inside - (seat.sets[index]?.overhang ?? NaN),
                      )
                    : inwards(seat, jig.hand, place).map(
                        (inside) => inside - setbackAt(place.z, setups[0] ?? setup()),
                      ),
                );
                // Some height of the face touches one of the planes; on a square edge the whole face does.
                const nearest = Math.min(...depths.flat().map(Math.abs));
                if (setups[0]?.backBevel === 0 || on === 'box') expect(nearest).toBeLessThan(TOUCH);
              }
            }
          }
          // On a bevelled edge the deepest line of the lip touches.
          const lipDepths = seat.contacts
            .filter(({ on }) => on === 'front edge')
            .flatMap(({ piece, line }) =>
              seat.poses
                .filter((placed) => placed.piece === piece)
                .flatMap(({ pose }) =>
                  (line ?? []).flatMap((point) =>
                    [0, thickness].map((height) => {
                      const place = at(pose, point, height);
                      const setback = setbackAt(place.z, setups[0] ?? setup());
                      return Math.min(
                        ...inwards(seat, jig.hand, place).map((inside) => Math.abs(inside - setback)),
                      );
                    }),
                  ),
                ),
            );
          expect(Math.min(...lipDepths)).toBeLessThan(TOUCH);
        }
      });

      test(`${name} reaches into neither front nor box, and stays clear of the bench`, () => {
        for (const seat of jig.seats) {
          for (const { piece, pose } of seat.poses) {
            for (const { point, height } of samples(jig, piece, thickness)) {
              const place = at(pose, point, height);
              expect(inFront(seat, jig, setups, place)).toBeLessThan(TOUCH);
              expect(inBox(seat, jig, place)).toBeLessThan(TOUCH);
              expect(place.z).toBeGreaterThan(-(setups[0]?.frontThickness ?? 0) + 0.9);
            }
          }
        }
      });

      test(`${name} has a pose for each copy of each piece, and layers that do not overlap`, () => {
        for (const seat of jig.seats) {
          for (const piece of jig.pieces) {
            expect(seat.poses.filter((placed) => placed.piece === piece.name)).toHaveLength(piece.copies);
          }
          const flats = seat.poses.filter(({ piece }) => !piece.includes('key'));
          const places = flats.map(({ pose }) => JSON.stringify(at(pose, { x: 0, y: 0 }, thickness / 2)));
          expect(new Set(places).size).toBe(places.length);
        }
      });

      test(`${name} holds its holes inside the sheet with wood round them`, () => {
        for (const piece of jig.pieces) {
          const outline = bounds(piece.outline);
          for (const { contour } of piece.holes) {
            const hole = bounds(contour);
            expect(hole.min.x - outline.min.x).toBeGreaterThan(2.5);
            expect(outline.max.x - hole.max.x).toBeGreaterThan(2.5);
            expect(hole.min.y - outline.min.y).toBeGreaterThan(2.5);
            expect(outline.max.y - hole.max.y).toBeGreaterThan(2.5);
          }
          const boxes = piece.holes.map(({ contour }) => bounds(contour));
          for (const [index, a] of boxes.entries()) {
            for (const b of boxes.slice(index + 1)) {
              const apart = Math.max(
                b.min.x - a.max.x,
                a.min.x - b.max.x,
                b.min.y - a.max.y,
                a.min.y - b.max.y,
              );
              expect(apart).toBeGreaterThan(2.5);
            }
          }
        }
      });
    }
  });
}
