import { readStandard } from '../../rules/read-standard.ts';
import { describe, expect, test } from 'vitest';
import { contains } from '../../../core/geometry/contains.ts';
import { bounds } from '../../../core/geometry/measure.ts';
import { polygon } from '../../../core/geometry/polygon.ts';
import type { ContourItem, PaperItem } from '../../../core/files/paper/page/types.ts';
import type { Line, Solid } from '../../../core/scene/types.ts';
import { directionsOf, type Directions } from '../../../core/scene/directions.ts';
import { lineDrawing } from '../../../core/scene/line-drawing.ts';
import { seenSolid } from '../../../core/scene/line-faces.ts';
import { paintedScene } from '../../../core/scene/painted-scene.ts';
import { seatScene } from '../../../core/scene/seat-scene.ts';
import { planJigs } from '../../../core/jigs/plan.ts';
import { readMachine } from '../../jigs/setups.ts';
import { demoFits } from './fits.ts';

const block = (id: string, from: readonly number[], to: readonly number[]): Solid => {
  const [x = 0, y = 0, z = 0] = from;
  const [a = 0, b = 0, c = 0] = to;
  return {
    id,
    name: id,
    group: 'box',
    material: 'box',
    pose: { origin: { x, y, z }, u: { x: 1, y: 0, z: 0 }, v: { x: 0, y: 1, z: 0 } },
    layers: [
      {
        outline: [
          { x: 0, y: 0 },
          { x: a - x, y: 0 },
          { x: a - x, y: b - y },
          { x: 0, y: b - y },
        ],
        holes: [],
        from: 0,
        to: c - z,
      },
    ],
    lines: [],
    apart: { x: 0, y: 0, z: 0 },
    ghost: false,
  };
};

/** From the front, at the height of the bench: right is +x, up is +z. */
const FRONT = directionsOf({ azimuth: -90, elevation: 0 });

describe('seenSolid', () => {
  test('seenSolid shows one face of a block from the front, two from a corner, three from above it', () => {
    const one = block('a', [0, 0, 0], [10, 20, 30]);
    const faces = (azimuth: number, elevation: number) =>
      seenSolid(one, directionsOf({ azimuth, elevation })).faces.length;
    expect(faces(-90, 0)).toBe(1);
    expect(faces(-45, 0)).toBe(2);
    expect(faces(-45, 30)).toBe(3);
    expect(faces(-90, 90)).toBe(1);
  });
});

describe('lines among solids', () => {
  /** Points of a line, as shares of it, that no face drawn later covers. */
  const shownShares = (solid: Solid, seen: Directions, line: Line): readonly number[] => {
    const painted = paintedScene([solid], [{ mark: 'tested', line }], seen);
    const place = painted.findIndex((one) => one.kind === 'line' && one.mark === 'tested');
    const one = painted[place];
    if (one?.kind !== 'line') throw new Error('the line is not drawn');
    const [a, b] = one.ends;
    const later = painted.slice(place).flatMap((other) => (other.kind === 'face' ? [other.rings] : []));
    return Array.from({ length: 199 }, (_, index) => (index + 1) / 200).filter((share) => {
      const at = { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) };
      return !later.some((rings) => rings.every((ring) => contains(polygon(ring), at)));
    });
  };

  test('a line is hidden just where a block stands before it', () => {
    const line = [
      { x: 0, y: 50, z: 15 },
      { x: 100, y: 50, z: 15 },
    ] as const;
    const shown = shownShares(block('a', [40, 0, 0], [60, 10, 30]), FRONT, line);
    expect(shown.filter((share) => share > 0.4 && share < 0.6)).toEqual([]);
    expect(shown.filter((share) => share < 0.4 || share > 0.6)).toHaveLength(158);
  });

  test('a line before a block, above it, and along its own edges is whole', () => {
    const solid = block('a', [40, 0, 0], [60, 10, 30]);
    const edges = seenSolid(solid, FRONT).edges.filter(([a, b]) => Math.hypot(b.x - a.x, b.z - a.z) > 0);
    expect(edges.length).toBeGreaterThan(3);
    for (const edge of edges) expect(shownShares(solid, FRONT, edge)).toHaveLength(199);
    for (const [y, z] of [
      [-5, 15],
      [50, 31],
    ] as const) {
      const shown = shownShares(solid, FRONT, [
        { x: 0, y, z },
        { x: 100, y, z },
      ]);
      expect(shown).toHaveLength(199);
    }
  });

  test('a line on the floor behind a block is hidden as far as worked out by hand', () => {
    // Seen from 45 degrees above, a block of height 30 hides the floor behind it as far as its height.
    const seen = directionsOf({ azimuth: -90, elevation: 45 });
    const shown = shownShares(block('a', [-500, 0, 0], [500, 10, 30]), seen, [
      { x: 0, y: 10, z: 0 },
      { x: 0, y: 110, z: 0 },
    ]);
    expect(shown.filter((share) => share < 0.3)).toEqual([]);
    expect(shown.filter((share) => share > 0.3)).toHaveLength(139);
  });
});

describe('lineDrawing', () => {
  const { order, fits } = demoFits('boathouse-frameless');
  const machine = readMachine('router');
  const plan = planJigs(fits, 'corner', { machine, unit: order.unit, order: [order.name] }).value;
  const [use] = plan.uses;
  if (use === undefined) throw new Error('no jigs');
  const uses = plan.uses.filter(({ fit, jig }) => fit === use.fit && jig === use.jig).map(({ edge }) => edge);
  const scene = seatScene({
    fit: use.fit,
    jig: use.jig,
    uses,
    machine,
    box: readStandard('frameless-undermount.json').box,
  });
  if (scene === null) throw new Error('no seat');

  test('lineDrawing draws every view of a seat, its lines within the frame once clipped, its overhangs in words', () => {
    for (const view of scene.views) {
      const drawing = lineDrawing(scene, view, 'mm');
      const words = textsOf(drawing.items);
      for (const { overhang } of scene.dimensions) expect(words).toContain(`${overhang} mm`);
      const contours = contoursOf(drawing.items);
      expect(contours.length).toBeGreaterThan(3);
      const box = bounds(...contours.flatMap((item) => item.contours));
      expect(box.max.x - box.min.x).toBeGreaterThan(drawing.frame.w / 4);
      expect(contours.some(({ fill }) => fill !== undefined)).toBe(true);
    }
  });

  test('lineDrawing gives the same drawing for the same seat', () => {
    const [view] = scene.views;
    if (view === undefined) throw new Error('no views');
    expect(lineDrawing(scene, view, 'mm')).toEqual(lineDrawing(scene, view, 'mm'));
  });
});

const textsOf = (items: readonly PaperItem[]): readonly string[] =>
  items.flatMap((item) =>
    item.kind === 'text' ? [item.text] : item.kind === 'group' ? textsOf(item.items) : [],
  );

const contoursOf = (items: readonly PaperItem[]): readonly ContourItem[] =>
  items.flatMap((item) =>
    item.kind === 'contour' ? [item] : item.kind === 'group' ? contoursOf(item.items) : [],
  );
