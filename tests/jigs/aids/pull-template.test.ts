import { describe, expect, test } from 'vitest';
import { bounds } from '../../../core/geometry/measure.ts';
import { offsetContour } from '../../../core/geometry/offset.ts';
import type { ClosedContour } from '../../../core/geometry/types.ts';
import { topCornerFrame } from '../../../core/jigs/aids/aid-frame.ts';
import { pullTemplate } from '../../../core/jigs/aids/pull-template.ts';
import type { TemplateSetup } from '../../../core/jigs/aids/types.ts';
import { edgeFrame } from '../../../core/jigs/edge-frame.ts';
import { mirrorJig } from '../../../core/jigs/mirror-jig.ts';
import type { Jig, Pose } from '../../../core/jigs/types.ts';
import { compose, inPose } from '../../../core/jigs/vec3.ts';
import { exportPart } from '../../../core/files/export-part.ts';
import { makePart } from '../../../core/parts/make-part.ts';
import { jigSolids } from '../../../core/scene/jig-solids.ts';
import { placed } from '../../../core/scene/place-jig.ts';
import { STROKE_FONT } from '../../../shared/stroke-font.ts';
import { readWithDxfParser } from '../../readers/dxf-parser.ts';
import { blockManifold, manifoldOf, sharedVolume, union } from '../../scene/manifolds.ts';
import { contextOf, MACHINE_NAMES } from '../setups.ts';
import { oneFit } from './fastenings.ts';
import { partFaults, pieceOf } from './pieces.ts';

const fit = oneFit();
const { frontW, frontH, frontThickness } = fit;

const setupAt = (at: TemplateSetup['at'], given: Partial<TemplateSetup> = {}): TemplateSetup => {
  const middle = at === 'middle' ? 0 : 140;
  return {
    at,
    holes: [
      { x: middle - 48, y: 70 },
      { x: middle + 48, y: 70 },
    ],
    bit: 5,
    bore: 5.127,
    frontThickness,
    backBevel: 0,
    front: { x: frontW, y: frontH },
    ...given,
  };
};

const PLACES = ['left', 'right', 'middle'] as const;

const frameOf = (at: TemplateSetup['at']): Pose =>
  at === 'middle' ? edgeFrame('top', frontW, frontH) : topCornerFrame(fit, at);

const seatOf = (jig: Jig) => {
  const [seat] = jig.seats;
  if (seat === undefined) throw new Error('no seat');
  return seat;
};

const cases = MACHINE_NAMES.flatMap((machine) =>
  PLACES.map((at) => ({ machine, at, name: `${at} on ${machine}` })),
);

describe('pullTemplate', () => {
  test.for(cases)(
    '$name: its bores, read back from the DXF and seated, are at the pull’s holes',
    ({ machine, at }) => {
      const context = contextOf(machine);
      const setup = setupAt(at);
      const jig = pullTemplate.build('T1', setup, context);
      const plate = pieceOf(jig, 'plate');
      const drawn = { ...context.machine, compensation: 'machine' } as const;
      const { value } = exportPart(makePart(jig, plate, drawn, STROKE_FONT).value, drawn);
      const circles = readWithDxfParser(value?.dxf ?? '')
        .entities.flatMap(({ circle }) => (circle === null ? [] : [circle]))
        .filter(([, , radius]) => Math.abs(2 * radius - setup.bore) < 1e-5);
      expect(circles).toHaveLength(2);
      const pose = seatOf(jig).poses.find(({ piece }) => piece === 'plate')?.pose ?? frameOf(at);
      const seated = circles
        .map(([x, y]) => inPose(compose(frameOf(at), pose), { x, y }))
        .toSorted((a, b) => a.x - b.x);
      // Told afresh in the back view: the cabinet's left edge is at x = front width, the top edge at its height.
      const across = (x: number) => ({ left: frontW - x, right: x, middle: frontW / 2 - x })[at];
      const wanted = setup.holes
        .map(({ x, y }) => ({ x: across(x), y: frontH - y }))
        .toSorted((a, b) => a.x - b.x);
      for (const [index, { x, y }] of wanted.entries()) {
        expect(seated[index]?.x).toBeCloseTo(x, 5);
        expect(seated[index]?.y).toBeCloseTo(y, 5);
        expect(seated[index]?.z).toBeCloseTo(0, 9);
      }
    },
  );

  test.for(cases)(
    '$name: its lips touch the edges, it reaches into nothing and stays clear of the bench',
    ({ machine, at }) => {
      const context = contextOf(machine);
      const jig = pullTemplate.build('T1', setupAt(at), context);
      const seat = seatOf(jig);
      const body = union(
        placed(jigSolids(jig, seat, context.machine), frameOf(at)).map((solid) => manifoldOf(solid)),
      );
      const front = blockManifold({ x: 0, y: 0, z: -frontThickness }, { x: frontW, y: frontH, z: 0 });
      expect(sharedVolume(body, front)).toBeLessThan(0.05);
      expect(body.boundingBox().min[2]).toBeGreaterThan(0.9 - frontThickness);
      const towards = [
        [0, -0.05, 0],
        [0, 0, -0.05],
        ...(at === 'middle' ? [] : [[at === 'left' ? -0.05 : 0.05, 0, 0]]),
      ] as const;
      for (const by of towards) {
        expect(sharedVolume(body.translate([by[0] ?? 0, by[1] ?? 0, by[2] ?? 0]), front)).toBeGreaterThan(
          0.5,
        );
      }
      expect(new Set(seat.contacts.map(({ on }) => on))).toEqual(new Set(['front back', 'front edge']));
    },
  );

  test.for(cases)('$name: parts are made without findings, text clear of every hole', ({ machine, at }) => {
    const context = contextOf(machine);
    const jig = pullTemplate.build('T1', setupAt(at), context);
    expect(partFaults(jig, context)).toEqual([]);
  });

  test.for(MACHINE_NAMES)('on %s: the right one is the mirror image of the left one', (machine) => {
    const left = pullTemplate.build('T1', setupAt('left'), contextOf(machine));
    const right = pullTemplate.build('T1', setupAt('right'), contextOf(machine));
    expect([left.hand, right.hand]).toEqual(['left', 'right']);
    expect(mirrorJig(right).pieces.map(({ outline, holes }) => ({ outline, holes }))).toEqual(
      left.pieces.map(({ outline, holes }) => ({ outline, holes })),
    );
    expect(mirrorJig(mirrorJig(left))).toEqual(left);
    const words = pieceOf(right, 'plate').labels.flatMap(({ phrases }) => phrases);
    expect(words).toEqual(expect.arrayContaining(['TOP RIGHT CORNER', 'RIGHT EDGE →', '← CABINET LEFT']));
  });

  test('the notch of a middle one is on the centre line, and each half is the other’s mirror image', () => {
    const jig = pullTemplate.build('T1', setupAt('middle'), contextOf('laser-6'));
    expect(jig.hand).toBeNull();
    const plate = pieceOf(jig, 'plate');
    const far = bounds(plate.outline).max.y;
    const notch = plate.outline.vertices.filter(({ x, y }) => x === 0 && y < far && y > far - 5);
    expect(notch).toHaveLength(1);
    const words = plate.labels.flatMap(({ phrases }) => phrases);
    expect(words).toContain('CENTER LINE AT NOTCH');
    expect(plate.marks?.[0]?.vertices.map(({ x }) => x)).toEqual([0, 0]);
  });

  test('on a bevelled edge the bores keep their distance from the edges of the face', () => {
    const context = contextOf('laser-6');
    const setup = setupAt('left', { backBevel: 3 });
    const jig = pullTemplate.build('T1', setup, context);
    const plate = pieceOf(jig, 'plate');
    const pose = seatOf(jig).poses.find(({ piece }) => piece === 'plate')?.pose;
    const bores = plate.holes.flatMap(({ purpose, contour }) =>
      purpose === 'bore' && contour.kind === 'circle' ? [contour.center] : [],
    );
    expect(
      bores.map(({ x, y }) => ({ x: x + (pose?.origin.x ?? NaN), y: y + (pose?.origin.y ?? NaN) })),
    ).toEqual(setup.holes.map(({ x, y }) => ({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) })));
    // On a bevelled edge the lip is as deep as the bench allows: 18 mm of 19.05, so that it meets the edge 1.05 mm
    // above the face.
    expect(pose?.origin.x).toBeCloseTo(1.05 * Math.tan((3 * Math.PI) / 180), 2);
  });

  test('the kerf moves a bore away from both edges by half of what was not compensated', () => {
    const jig = pullTemplate.build('T1', setupAt('left'), contextOf('laser-6'));
    const lip = pieceOf(jig, 'lip').outline;
    const kerf = 0.3;
    const cut: readonly ClosedContour[] = offsetContour(lip, -kerf / 2).value;
    const inside = (contour: ClosedContour) => {
      const { vertices } = contour.kind === 'circle' ? { vertices: [] } : contour;
      // The lip's face that looks along y: the lowest straight stretch above the middle of the lip.
      const faces = vertices.filter(({ y }, index) => {
        const next = vertices[(index + 1) % vertices.length];
        return next !== undefined && Math.abs(next.y - y) < 1e-9 && Math.abs(y) < 2;
      });
      return Math.max(...faces.map(({ y }) => y));
    };
    const moved = inside(lip) - inside(cut[0] ?? lip);
    expect(moved).toBeCloseTo((jig.drilling?.kerfShift.y ?? NaN) * kerf, 6);
    expect(jig.sensitivity.kerf).toBe(0.5);
  });

  test('refuses what it cannot reach, and a front that is too small or too thin', () => {
    const context = contextOf('laser-6');
    const wide = setupAt('left', { holes: [{ x: 420, y: 70 }], front: { x: 900, y: 200 } });
    expect(pullTemplate.refuses(wide, context)).toMatch(/^a template of .* is above the most, 400 mm$/);
    expect(pullTemplate.refuses(setupAt('left', { front: { x: 500, y: 80 } }), context)).toMatch(
      /is larger than the front of 500 mm by 80 mm$/,
    );
    expect(pullTemplate.refuses(setupAt('left', { frontThickness: 6 }), context)).toMatch(
      /too thick for a lip/,
    );
    expect(pullTemplate.refuses(setupAt('middle', { holes: [] }), context)).toBe('there is no hole to place');
    expect(() => pullTemplate.build('T1', setupAt('left', { frontThickness: 6 }), context)).toThrow(
      RangeError,
    );
  });

  test('says that it lies on the back, that the holes go through, and that a board backs the face', () => {
    const jig = pullTemplate.build('T1', setupAt('left'), contextOf('laser-6'));
    const words = (jig.drilling?.words ?? []).join(' ');
    expect(words).toMatch(/lies on the back of the front/);
    expect(words).toMatch(/scrap board under the face/);
    expect(pullTemplate.use).toMatch(/scrap board/);
  });
});
