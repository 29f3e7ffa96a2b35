import { readStandard } from '../rules/read-standard.ts';
import { describe, expect, test } from 'vitest';
import { dimensionName, dimensionText } from '../../core/scene/dimensions.ts';
import { directionsOf } from '../../core/scene/directions.ts';
import { moveOf, offsetOf } from '../../core/scene/offset-of.ts';
import { seatScene } from '../../core/scene/seat-scene.ts';
import { sectionText } from '../../core/scene/section-text.ts';
import { demoScenes, SOME, type DemoScene } from './demo-scenes.ts';
import { blockOf, cornersOf, groupManifold, sharedVolume } from './manifolds.ts';

const demos = demoScenes(SOME);
const all = demos.flatMap(({ scenes }) => scenes);

const find = (kind: string, edge: 'left' | 'right' | 'bottom'): DemoScene => {
  const found = all.find(({ scene }) => scene.jig.kind === kind && scene.edges.includes(edge));
  if (found === undefined) throw new Error(`no ${kind} at the ${edge}`);
  return found;
};

const ORIGIN = { x: 0, y: 0, z: 0 };

const BOX = readStandard('face-frame-undermount.json').box;

describe('useSteps', () => {
  test('useSteps: the front is placed, the jig seated, the box set, drilled, driven, the jig lifted off', () => {
    for (const { scene } of all) {
      expect(scene.steps.map(({ id }) => id)).toEqual(['front', 'seat', 'box', 'drill', 'drive', 'lift']);
      for (const { title, words } of scene.steps) {
        expect(title.length).toBeGreaterThan(3);
        expect(words).toMatch(/^[A-Z].{30,}\.$/);
      }
    }
  });

  test('useSteps: the words name each edge in use, and no other', () => {
    for (const { scene } of all) {
      for (const id of ['seat', 'lift'] as const) {
        const words = scene.steps.find((step) => step.id === id)?.words ?? '';
        for (const edge of ['left', 'right', 'bottom', 'top'] as const) {
          expect(words.includes(edge)).toBe(scene.edges.includes(edge));
        }
      }
    }
  });

  test('useSteps: bits and depths are told as the shop reads them', () => {
    const wordsIn = (unit: 'in' | 'mm') =>
      all.flatMap(({ fit, jig, machine, uses, fastening }) => {
        if (fastening === null || fastening.holes === null || fastening.places.length === 0) return [];
        const scene = seatScene({ fit, jig, machine, box: BOX, uses, fastening, unit });
        return scene?.steps.find(({ id }) => id === 'drill')?.words ?? [];
      });
    const [inches, mm] = [wordsIn('in'), wordsIn('mm')];
    expect(Math.min(inches.length, mm.length)).toBeGreaterThan(0);
    for (const words of inches)
      expect(words).toMatch(/pilot holes of .*\d" from inside .* depth stop \S.*" from/);
    for (const words of mm)
      expect(words).toMatch(/pilot holes of [\d.]+ mm from inside .* depth stop [\d.]+ mm from/);
  });

  test('useSteps: what moves ends in its seat, but for the jig that is lifted off', () => {
    for (const { scene } of all) {
      for (const step of scene.steps) {
        for (const group of ['front', 'jig', 'box'] as const) {
          const end = moveOf(group, step, 1);
          if (step.id === 'lift' && group === 'jig') expect(Math.hypot(end.x, end.y)).toBeGreaterThan(50);
          else expect(end).toEqual(ORIGIN);
        }
      }
    }
  });

  test('useSteps: the jig passes through neither front nor box on its way to its seat and from it', () => {
    for (const kind of ['bottom fence', 'side spacer', 'step profile', 'corner fence']) {
      for (const edge of ['left', 'right', 'bottom'] as const) {
        const one = all.find(({ scene }) => scene.jig.kind === kind && scene.edges.includes(edge));
        if (one === undefined) continue;
        const jig = groupManifold(one.scene, 'jig');
        for (const id of ['seat', 'lift'] as const) {
          const step = one.scene.steps.find((each) => each.id === id) ?? null;
          for (const share of [0, 0.25, 0.5, 0.75]) {
            const { x, y, z } = moveOf('jig', step, share);
            const there = jig.translate([x, y, z]);
            expect(sharedVolume(there, groupManifold(one.scene, 'front'))).toBeLessThan(1e-3);
            if (id === 'lift') {
              expect(sharedVolume(there, groupManifold(one.scene, 'box'))).toBeLessThan(1e-3);
            }
          }
        }
      }
    }
  });

  test('useSteps: a bit and a screw go in at each place, along its axis, to where the place has them', () => {
    for (const { scene, fastening } of all) {
      if (fastening === null || fastening.screw === null) continue;
      const box = blockOf(groupManifold(scene, 'box'));
      for (const [id, group] of [
        ['drill', 'bit'],
        ['drive', 'screw'],
      ] as const) {
        const step = scene.steps.find((each) => each.id === id) ?? null;
        expect(step?.shown).toContain(group);
        expect(step?.tools).toEqual([]);
        const tools = scene.tools.filter((solid) => solid.group === group);
        expect(tools).toHaveLength(fastening.places.length);
        for (const [index, solid] of tools.entries()) {
          const place = fastening.places[index];
          if (place === undefined) throw new Error('more tools than places');
          const from = offsetOf(solid, step, 0, 0);
          expect(offsetOf(solid, step, 1, 0)).toEqual({ x: 0, y: 0, z: 0 });
          // It starts above the box front, on the screw's own axis.
          const far = Math.hypot(from.x, from.y, from.z);
          expect(from.z).toBeGreaterThan(0);
          for (const axis of ['x', 'y', 'z'] as const) {
            expect(from[axis]).toBeCloseTo(-place.direction[axis] * far, 9);
          }
          const { origin, u, v } = solid.pose;
          expect(origin.x).toBeGreaterThan(box.min.x);
          expect(origin.x).toBeLessThan(box.max.x);
          for (const side of [u, v]) {
            const { x, y, z } = place.direction;
            expect(side.x * x + side.y * y + side.z * z).toBeCloseTo(0, 12);
          }
        }
      }
    }
  });

  test('useSteps: without screws the tool arrows come down onto the front of the box, from inside it', () => {
    for (const { fit, jig, machine, uses } of all.slice(0, 5)) {
      const scene = seatScene({ fit, jig, machine, box: BOX, uses });
      if (scene === null) throw new Error('no seat');
      const box = blockOf(groupManifold(scene, 'box'));
      const drill = scene.steps.find(({ id }) => id === 'drill');
      expect(drill?.tools).toHaveLength(2);
      for (const { line } of drill?.tools ?? []) {
        expect(line[0].z).toBeGreaterThan(line[1].z);
        expect(line[1].x).toBeGreaterThan(box.min.x);
        expect(line[1].x).toBeLessThan(box.max.x);
      }
    }
  });
});

describe('offsetOf', () => {
  test('offsetOf: drawn wholly apart, no two solids share space', () => {
    for (const { jigs, scenes } of demos) {
      for (const jig of jigs) {
        const one = scenes.find((each) => each.jig === jig);
        if (one === undefined) throw new Error(`${jig.id} is not used`);
        const sheets = one.scene.solids
          .filter(({ group }) => group === 'jig')
          .map((solid) => ({ solid, offset: offsetOf(solid, null, 1, 1) }));
        expect(new Set(sheets.map(({ offset }) => JSON.stringify(offset))).size).toBeGreaterThan(1);
        for (const { offset } of sheets) expect(Math.hypot(offset.x, offset.y)).toBeGreaterThan(20);
      }
    }
  });

  test('offsetOf: at rest and not apart, everything is in its seat', () => {
    for (const { scene } of all) {
      for (const solid of scene.solids) expect(offsetOf(solid, null, 1, 0)).toEqual(ORIGIN);
    }
  });
});

describe('standardViews', () => {
  test('standardViews: from above it is the back view, from the side the box is at the right of the edge', () => {
    for (const { scene } of all) {
      const above = scene.views.find(({ id }) => id === 'above');
      const side = scene.views.find(({ id }) => id === 'side');
      if (above === undefined || side === undefined) throw new Error('a view is missing');
      const down = directionsOf(above);
      expect(down.right.x).toBeCloseTo(1, 12);
      expect(down.up.y).toBeCloseTo(1, 12);
      expect(down.viewer.z).toBeCloseTo(1, 12);
      const { right, up } = directionsOf(side);
      expect(up.z).toBeCloseTo(1, 12);
      const [first] = scene.edges;
      const inwards = { bottom: [0, 1], top: [0, -1], right: [1, 0], left: [-1, 0] }[first ?? 'bottom'];
      expect(right.x * (inwards[0] ?? 0) + right.y * (inwards[1] ?? 0)).toBeCloseTo(1, 12);
    }
  });

  test('standardViews: the whole jig and its dimensions are in each picture', () => {
    for (const { scene } of all) {
      const points = [
        ...cornersOf(groupManifold(scene, 'jig')),
        ...scene.dimensions.flatMap(({ line }) => line),
      ];
      for (const view of scene.views) {
        const { right, up } = directionsOf(view);
        for (const point of points) {
          const off = { x: point.x - view.focus.x, y: point.y - view.focus.y, z: point.z - view.focus.z };
          expect(Math.abs(off.x * right.x + off.y * right.y + off.z * right.z)).toBeLessThanOrEqual(
            view.half.across,
          );
          expect(Math.abs(off.x * up.x + off.y * up.y + off.z * up.z)).toBeLessThan(1e-3 + view.half.up);
        }
      }
    }
  });
});

describe('words', () => {
  test('dimensionText: the overhang as it is read in either unit', () => {
    const { scene } = find('corner fence', 'left');
    expect(scene.dimensions.map(dimensionName)).toEqual(['Bottom overhang', 'Cabinet-left overhang']);
    expect(dimensionText({ overhang: 36.5125 }, 'in')).toBe('1 7/16"');
    expect(dimensionText({ overhang: 36.5 }, 'mm')).toBe('36.5 mm');
  });

  test('sectionText: the place of a cut from the middle of the jig', () => {
    const section = { axis: 'x', side: 1, at: 100, from: 50, to: 150 } as const;
    expect(sectionText(section, 100, 'mm')).toBe('at the middle of the jig');
    expect(sectionText(section, 112, 'mm')).toBe('12 mm from the middle, nearer as seen from the side');
    expect(sectionText({ ...section, side: -1 }, 125.4, 'in')).toBe(
      '1.00" from the middle, farther as seen from the side',
    );
  });
});

describe('seatScene', () => {
  test('seatScene: a jig has no seat on an edge or a bevel that it is not made for', () => {
    const { fit, jig, machine } = find('bottom fence', 'bottom');
    expect(seatScene({ fit, jig, machine, box: BOX, uses: ['left'] })).toBeNull();
    expect(seatScene({ fit, jig, machine, box: BOX, uses: [] })).toBeNull();
    const other = all.find((one) => one.jig.kind === 'bottom fence' && one.jig.id !== jig.id);
    if (other === undefined) throw new Error('one bottom fence only');
    expect(seatScene({ fit, jig: other.jig, machine, box: BOX, uses: ['bottom'] })).toBeNull();
  });

  test('seatScene: a block for both sides hangs on the edge in use', () => {
    const { fit, jig, machine, uses } = find('side spacer', 'left');
    expect(uses).toEqual(['left']);
    const left = seatScene({ fit, jig, machine, box: BOX, uses: ['left'] });
    const right = seatScene({ fit, jig, machine, box: BOX, uses: ['right'] });
    if (left === null || right === null) throw new Error('no seat');
    expect(blockOf(groupManifold(left, 'jig')).max.x).toBeGreaterThan(fit.frontW);
    expect(blockOf(groupManifold(right, 'jig')).min.x).toBeLessThan(0);
  });

  test('seatScene: an overhang that is off by less than 0.001 mm still touches', () => {
    const { fit, jig, machine } = find('bottom fence', 'bottom');
    const near = { ...fit, overhang: { ...fit.overhang, bottom: fit.overhang.bottom + 0.0009 } };
    const scene = seatScene({ fit: near, jig, machine, box: BOX, uses: ['bottom'] });
    if (scene === null) throw new Error('no seat');
    expect(groupManifold(scene, 'jig').minGap(groupManifold(scene, 'box'), 1)).toBeLessThanOrEqual(1e-6);
  });
});
