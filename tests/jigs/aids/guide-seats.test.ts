import { describe, expect, test } from 'vitest';
import type { Corner } from '../../../core/fastening/types.ts';
import { bounds } from '../../../core/geometry/measure.ts';
import { boxCornerFrame } from '../../../core/jigs/aids/aid-frame.ts';
import { cornerDrillGuide } from '../../../core/jigs/aids/corner-drill-guide.ts';
import { cornerNeeds } from '../../../core/jigs/aids/guide-setups.ts';
import type { Vec3 } from '../../../core/jigs/types.ts';
import { compose, inPose } from '../../../core/jigs/vec3.ts';
import { jigSolids } from '../../../core/scene/jig-solids.ts';
import { placed } from '../../../core/scene/place-jig.ts';
import { blockManifold, manifoldOf, sharedVolume, union } from '../../scene/manifolds.ts';
import { contextOf, MACHINE_NAMES } from '../setups.ts';
import { boxOf, CORNERS, fasteningOf, FLOOR, oneFit, placeAt, STANDARD } from './fastenings.ts';

/** mm. Contacts touch to this. */
const TOUCH = 1e-6;

/** mm³. What single precision makes of faces that touch. */
const NOTHING = 0.05;

const fit = oneFit();
const box = boxOf(fit);
const floorTop = box.bottom + FLOOR;

const vec = (x: number, y: number, z: number): Vec3 => ({ x, y, z });

// The front and the box, told afresh from the sizes of the fit.
const { boxSide, boxFront, frontW, frontH, frontThickness } = fit;
const SIDES = {
  right: blockManifold(vec(box.right, box.bottom, 0), vec(box.right + boxSide, box.top, 500)),
  left: blockManifold(vec(box.left - boxSide, box.bottom, 0), vec(box.left, box.top, 500)),
};
const BOX_FRONT = blockManifold(
  vec(box.right + boxSide, box.bottom, 0),
  vec(box.left - boxSide, box.top, boxFront),
);
const BOTTOM = blockManifold(
  vec(box.right + boxSide, floorTop - STANDARD.box.bottom.thickness.value, boxFront),
  vec(box.left - boxSide, floorTop, 500),
);
const FRONT = blockManifold(vec(0, 0, -frontThickness), vec(frontW, frontH, 0));
const ALL = union([SIDES.right, SIDES.left, BOX_FRONT, BOTTOM, FRONT]);

/** What the guide of a corner registers on, and the way towards it. */
const registers = ({ hand, end }: Corner) => [
  { name: 'the side', body: SIDES[hand], towards: vec(hand === 'right' ? -1 : 1, 0, 0) },
  {
    name: end === 'bottom' ? 'the bottom' : 'the top edge',
    body: end === 'bottom' ? BOTTOM : BOX_FRONT,
    towards: vec(0, -1, 0),
  },
  { name: 'the box front', body: BOX_FRONT, towards: vec(0, 0, -1) },
];

const built = new Map<string, ReturnType<typeof buildGuide>>();

/** A guide where it is seated, built once for all tests of it. */
function guide(corner: Corner, machine: (typeof MACHINE_NAMES)[number]) {
  const key = `${corner.hand} ${corner.end} ${machine}`;
  const found = built.get(key) ?? buildGuide(corner, machine);
  built.set(key, found);
  return found;
}

function buildGuide(corner: Corner, machine: (typeof MACHINE_NAMES)[number]) {
  const context = contextOf(machine);
  const lean = machine === 'router' ? { side: 0, rail: 0 } : { side: 14, rail: 9 };
  const place = placeAt(fit, corner, {
    fromSide: 22,
    fromEnd: corner.end === 'bottom' ? FLOOR + 12 : 14,
    lean,
  });
  const second = placeAt(fit, corner, {
    fromSide: 200,
    fromEnd: corner.end === 'bottom' ? FLOOR + 12 : 14,
    index: 1,
  });
  const [need] = cornerNeeds(fasteningOf(fit, [place, second]), STANDARD);
  if (need === undefined) throw new Error('no need');
  const refusal = cornerDrillGuide.refuses(need.setup, context);
  if (refusal !== null) throw new Error(refusal);
  const jig = cornerDrillGuide.build('G1', need.setup, context);
  const [seat] = jig.seats;
  if (seat === undefined) throw new Error('no seat');
  const frame = boxCornerFrame(fit, corner, STANDARD);
  const solids = placed(jigSolids(jig, seat, context.machine), frame);
  const bodies = solids.map(manifoldOf);
  return { context, jig, seat, frame, bodies, body: union(bodies), places: [place, second] };
}

const cases = MACHINE_NAMES.flatMap((machine) =>
  CORNERS.map((corner) => ({ machine, corner, name: `${corner.hand} ${corner.end} on ${machine}` })),
);

describe('the seat of a corner drill guide', () => {
  test.for(cases)('$name: every contact lies on its face, at distance 0', ({ machine, corner }) => {
    const { jig, seat, frame, context } = guide(corner, machine);
    const { thickness } = context.machine.sheet;
    const side = corner.hand === 'right' ? box.right + boxSide : box.left - boxSide;
    const off: Readonly<Record<string, (point: Vec3) => number>> = {
      'box side inside': ({ x }) => x - side,
      'box bottom': ({ y }) => y - floorTop,
      'box top edge': ({ y }) => y - box.top,
      'box front inside': ({ z }) => z - boxFront,
    };
    expect(new Set(seat.contacts.map(({ on }) => on))).toEqual(
      new Set([
        'box side inside',
        'box front inside',
        corner.end === 'bottom' ? 'box bottom' : 'box top edge',
      ]),
    );
    let measured = 0;
    for (const { piece, on, line } of seat.contacts) {
      for (const { pose } of seat.poses.filter((one) => one.piece === piece)) {
        for (const point of line ?? [{ x: 0, y: 0 }]) {
          const heights = line === undefined ? [0] : [0, thickness];
          for (const height of heights) {
            const there = inPose(compose(frame, pose), point, height);
            expect(Math.abs(off[on]?.(there) ?? NaN)).toBeLessThan(TOUCH);
            measured += 1;
          }
        }
      }
    }
    expect(measured).toBeGreaterThan(6);
    // And the line is a side of the piece's own outline.
    for (const { piece, line } of seat.contacts) {
      if (line === undefined) continue;
      const outline = bounds(jig.pieces.find(({ name }) => name === piece)?.outline ?? never());
      const [from, to] = line;
      const onX = Math.abs(from.x - to.x) < TOUCH;
      const edges = onX ? [outline.min.x, outline.max.x] : [outline.min.y, outline.max.y];
      expect(Math.min(...edges.map((edge) => Math.abs(edge - (onX ? from.x : from.y))))).toBeLessThan(TOUCH);
    }
  });

  test.for(cases)(
    '$name: nothing reaches into box or front, and it stays clear of the front',
    ({ machine, corner }) => {
      const { body } = guide(corner, machine);
      expect(sharedVolume(body, ALL)).toBeLessThan(NOTHING);
      // A lip over the box front has the front's back for a bench.
      expect(body.boundingBox().min[2]).toBeGreaterThan(0.9);
    },
  );

  test.for(cases)('$name: it touches what it registers on and nothing else', ({ machine, corner }) => {
    const { body } = guide(corner, machine);
    for (const { name, body: wall, towards } of registers(corner)) {
      const pushed = body.translate([0.05 * towards.x, 0.05 * towards.y, 0.05 * towards.z]);
      expect({ name, touches: sharedVolume(pushed, wall) > 0.5 }).toEqual({ name, touches: true });
    }
    // Moved off all three by the same little, it is free: nothing else was near.
    const away = registers(corner)
      .map(({ towards }) => towards)
      .reduce((sum, one) => vec(sum.x - one.x, sum.y - one.y, sum.z - one.z), vec(0, 0, 0));
    const free = body.translate([0.05 * away.x, 0.05 * away.y, 0.05 * away.z]);
    expect(sharedVolume(free, ALL)).toBe(0);
  });

  test.for(cases)('$name: its layers and keys do not reach into each other', ({ machine, corner }) => {
    const { bodies } = guide(corner, machine);
    for (const [index, a] of bodies.entries()) {
      for (const b of bodies.slice(index + 1)) expect(sharedVolume(a, b)).toBeLessThan(NOTHING);
    }
  });

  test.for(cases)(
    '$name: the bit that drills each screw’s hole passes, a thicker one does not',
    ({ machine, corner }) => {
      const { jig, body, places } = guide(corner, machine);
      const bores = jig.drilling?.bores ?? [];
      expect(bores).toHaveLength(places.length);
      for (const [index, { entry, direction }] of places.entries()) {
        const diameter = bores[index]?.diameter ?? NaN;
        const rod = (radius: number) => rodAlong({ ...entry, z: boxFront }, direction, radius);
        // Chords of 0.02 mm stand inside the bores.
        expect(sharedVolume(body, rod(diameter / 2 - 0.05))).toBe(0);
        expect(sharedVolume(body, rod(diameter / 2 + 0.1))).toBeGreaterThan(0.01);
      }
    },
  );
});

/** A slanted rod from below a point of its axis to far above it. */
function rodAlong(at: Vec3, direction: Vec3, radius: number) {
  const slope = { x: direction.x / direction.z, y: direction.y / direction.z };
  const secant = Math.hypot(slope.x, slope.y, 1);
  const [from, to] = [-5, 120];
  const angle = Math.atan2(slope.y, slope.x);
  const points = Array.from({ length: 96 }, (_, index) => {
    const turn = (index * 2 * Math.PI) / 96;
    const [u, v] = [radius * secant * Math.cos(turn), radius * Math.sin(turn)];
    return { x: u * Math.cos(angle) - v * Math.sin(angle), y: u * Math.sin(angle) + v * Math.cos(angle) };
  });
  const ringAt = (height: number) =>
    points.map(({ x, y }) => ({ x: x + slope.x * height, y: y + slope.y * height }));
  return manifoldOf({
    id: 'rod',
    name: 'rod',
    group: 'jig',
    material: 'pin',
    pose: { origin: { ...at, z: at.z }, u: vec(1, 0, 0), v: vec(0, 1, 0) },
    layers: [{ outline: ringAt(from), top: ringAt(to), holes: [], from, to }],
    lines: [],
    apart: vec(0, 0, 0),
    ghost: false,
  });
}

function never(): never {
  throw new Error('no piece');
}
