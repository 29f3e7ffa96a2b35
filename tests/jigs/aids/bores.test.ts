import { describe, expect, test } from 'vitest';
import { exportPart } from '../../../core/files/export-part.ts';
import { cornerDrillGuide } from '../../../core/jigs/aids/corner-drill-guide.ts';
import type { GuideSetup } from '../../../core/jigs/aids/types.ts';
import type { Bore, BuildContext, Jig } from '../../../core/jigs/types.ts';
import { makePart } from '../../../core/parts/make-part.ts';
import { STROKE_FONT } from '../../../shared/stroke-font.ts';
import { flatten } from '../../measure/outline.ts';
import { readWithDxfParser } from '../../readers/dxf-parser.ts';
import { readWithEzdxf } from '../../readers/ezdxf.ts';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { contextOf } from '../setups.ts';

type XY = readonly [number, number];

const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** mm. What an exported place is held to. */
const WITHIN = 0.002;

/** A guide of one bore of 5 mm that leans by so many degrees, in the direction `turn` from x. */
const guideAt = (angle: number, turn: number, end: 'bottom' | 'top' = 'bottom'): GuideSetup => ({
  hand: end === 'bottom' ? 'right' : 'left',
  end,
  places: [
    {
      index: 0,
      at: { x: 20, y: 14 },
      slope: {
        x: Math.tan(radians(angle)) * Math.cos(radians(turn)),
        y: Math.tan(radians(angle)) * Math.sin(radians(turn)),
      },
      depth: 30,
    },
  ],
  bit: 4.9,
  bore: 5,
  play: 0.1,
  bushed: false,
  guided: 10,
  screws: ['#8 x 1 in pan'],
  boxFront: 15.875,
  room: { x: 400, y: 150 },
});

/** The hole of one layer, read back from its file: points of a DXF, arcs as fine chords. */
function layerHoles(jig: Jig, context: BuildContext): readonly (readonly XY[])[] {
  const layers = jig.pieces.filter(({ name }) => name.startsWith('layer-'));
  return layers.map((piece) => {
    const part = makePart(jig, piece, context.machine, STROKE_FONT).value;
    const { value } = exportPart(part, context.machine);
    if (value === null) throw new Error('not exported');
    const { entities } = readWithDxfParser(value.dxf);
    // The bore is the only ring in the layer with arcs; the hang hole and pins are circles, slots have no arcs.
    const rings = entities.filter(
      ({ layer, vertices }) => layer === 'CUT_INSIDE' && vertices.some(([, , bulge]) => bulge !== 0),
    );
    expect(rings).toHaveLength(1);
    expect(entities.map(({ type }) => type)).not.toContain('ELLIPSE');
    expect(entities.map(({ type }) => type)).not.toContain('SPLINE');
    return flatten(rings[0]?.vertices ?? []);
  });
}

const asDrawn = (name: Parameters<typeof contextOf>[0]): BuildContext => {
  const context = contextOf(name);
  return { ...context, machine: { ...context.machine, compensation: 'machine' } };
};

/** Along the lean and across it, from where the axis leaves the box front. */
const inLean = ([x, y]: XY, { at }: Bore, turn: number): XY => {
  const [dx, dy] = [x - at.x, y - at.y];
  const [c, s] = [Math.cos(radians(turn)), Math.sin(radians(turn))];
  return [dx * c + dy * s, dy * c - dx * s];
};

const onlyBore = (jig: Jig): Bore => {
  const [bore] = jig.drilling?.bores ?? [];
  if (bore === undefined) throw new Error('no bore');
  return bore;
};

// Reference: a cylinder of 5 mm at t from the normal cuts the face in an ellipse 5 by 5/cos t.
const CASES = [
  [15, 5.1764, 30],
  [30, 5.7735, 75],
  [45, 7.0711, 0],
] as const;

describe('the layers of a leaning bore, read back from their DXF', () => {
  for (const machine of ['laser-6', 'laser-3', 'none'] as const) {
    const context = asDrawn(machine);
    const t = context.machine.sheet.thickness;

    test.for(CASES)(
      `on ${machine} at %i degrees: ellipses of 5 by %f mm, each thickness x tangent on`,
      ([angle, length, turn]) => {
        const jig = cornerDrillGuide.build('G1R', guideAt(angle, turn), context);
        const bore = onlyBore(jig);
        const step = t * Math.tan(radians(angle));
        const holes = layerHoles(jig, context).map((points) =>
          points.map((point) => inLean(point, bore, turn)),
        );
        expect(holes.length).toBe(jig.parameters['layers']);
        for (const [layer, points] of holes.entries()) {
          const us = points.map(([u]) => u);
          const vs = points.map(([, v]) => v);
          // From the ellipse at its lower face to the one at its upper face.
          expect(Math.max(...us)).toBeCloseTo((layer + 1) * step + length / 2, 2);
          expect(Math.min(...us)).toBeCloseTo(layer * step - length / 2, 2);
          expect(Math.max(...us) - Math.min(...us) - step).toBeCloseTo(length, 2);
          expect(Math.max(...vs) - Math.min(...vs)).toBeCloseTo(5, 2);
          const middle = (Math.max(...us) + Math.min(...us)) / 2;
          expect(Math.abs(middle - (layer + 0.5) * step)).toBeLessThan(WITHIN);
          // Every point of either end is on its exact ellipse, and of the sides on the cylinder's width.
          for (const [u, v] of points) {
            const end = u > (layer + 1) * step ? (layer + 1) * step : layer * step;
            const inEnd = u > (layer + 1) * step || u < layer * step;
            const radial = inEnd ? Math.hypot(((u - end) * 5) / length, v) - 2.5 : Math.abs(v) - 2.5;
            expect(Math.abs(radial)).toBeLessThan(0.005);
          }
        }
        expect(Math.hypot(bore.shift.x, bore.shift.y)).toBeCloseTo(step, 9);
      },
    );
  }

  test('ezdxf reads every layer without errors or fixes', () => {
    const context = contextOf('laser-6');
    const jig = cornerDrillGuide.build('G1L', guideAt(30, 40, 'top'), context);
    const folder = mkdtempSync(join(tmpdir(), 'overhang-aids-'));
    try {
      const paths = jig.pieces.map((piece) => {
        const part = makePart(jig, piece, context.machine, STROKE_FONT).value;
        const { value, findings } = exportPart(part, context.machine);
        expect(findings).toEqual([]);
        const path = join(folder, `${part.id}.dxf`);
        writeFileSync(path, value?.dxf ?? '');
        return path;
      });
      for (const { failure, errors, fixes } of readWithEzdxf(paths)) {
        expect({ failure, errors, fixes }).toEqual({ failure: null, errors: [], fixes: [] });
      }
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  test('with the kerf compensated, a hole is drawn the kerf narrower each way', () => {
    const context = contextOf('laser-6');
    const jig = cornerDrillGuide.build('G1R', guideAt(30, 0), context);
    const [first] = layerHoles(jig, context);
    const vs = (first ?? []).map((point) => inLean(point, onlyBore(jig), 0)[1]);
    expect(Math.max(...vs) - Math.min(...vs)).toBeCloseTo(5 - 0.2, 2);
  });
});

/** The stretch that layers leave free along the lean at each of their faces: [height, low, high]. */
function freeStretches(holes: readonly (readonly XY[])[], t: number) {
  return holes.flatMap((points, layer) => {
    const us = points.map(([u]) => u);
    const [low, high] = [Math.min(...us), Math.max(...us)];
    return [
      [layer * t, low, high],
      [(layer + 1) * t, low, high],
    ] as const;
  });
}

/** The most that a straight bit can do of something, over all lines that two of the faces' limits fix. */
function worst(
  stretches: ReturnType<typeof freeStretches>,
  half: number,
  of: (offset: number, slope: number) => number,
): number {
  const slack = 1e-4;
  const limits = stretches.flatMap(([height, low, high]) => [
    { height, value: low + half },
    { height, value: high - half },
  ]);
  let most = 0;
  for (const a of limits) {
    for (const b of limits) {
      if (a.height === b.height) continue;
      const slope = (b.value - a.value) / (b.height - a.height);
      const offset = a.value - slope * a.height;
      const passes = stretches.every(
        ([height, low, high]) =>
          offset + slope * height - half > low - slack && offset + slope * height + half < high + slack,
      );
      if (passes) most = Math.max(most, of(offset, slope));
    }
  }
  return most;
}

describe('what a stack does to the bit', () => {
  for (const [angle] of CASES) {
    const context = asDrawn('laser-6');
    const t = context.machine.sheet.thickness;
    const jig = cornerDrillGuide.build('G1R', guideAt(angle, 0), context);
    const bore = onlyBore(jig);
    const cos = Math.cos(radians(angle));
    const holes = layerHoles(jig, context).map((points) => points.map((point) => inLean(point, bore, 0)));
    const stretches = freeStretches(holes, t);

    test(`at ${angle} degrees a cylinder of the bore goes through, and one 0.02 mm wider does not`, () => {
      const passes = (diameter: number) =>
        stretches.every(([height, low, high]) => {
          const [middle, half] = [height * Math.tan(radians(angle)), diameter / 2 / cos];
          return middle - half > low && middle + half < high;
        });
      expect(passes(5 - 0.002)).toBe(true);
      expect(passes(5 + 0.02)).toBe(false);
      expect(bore.edgeGap).toBeLessThanOrEqual(0.005);
    });

    test(`at ${angle} degrees play and tilt are what a search over straight lines finds`, () => {
      const half = bore.bit / 2 / cos;
      const tangent = Math.tan(radians(angle));
      // Across the bit, not along the face.
      const play = worst(stretches, half, (offset) => Math.abs(offset) * cos);
      expect(Math.abs(play - bore.play)).toBeLessThan(0.004);
      const tilt = worst(stretches, half, (_, slope) =>
        Math.abs((Math.atan(slope) - Math.atan(tangent)) / radians(1)),
      );
      expect(Math.abs(tilt - bore.tilt)).toBeLessThan(0.05 * bore.tilt + 0.01);
    });

    test(`at ${angle} degrees the length that is held on all sides is at least what is asked for`, () => {
      const layers = holes.length;
      // Between the lowest upper edge and the highest lower edge there is wood against the bit on both sides.
      expect(bore.guided).toBeCloseTo(((layers - 2) * t) / cos, 9);
      expect(bore.guided).toBeGreaterThanOrEqual(10);
      expect(((layers - 3) * t) / cos).toBeLessThan(10);
      expect(bore.step).toBeCloseTo(t * Math.sin(radians(angle)), 9);
    });
  }

  test('a straight bore is a circle in every layer, guided over all of them', () => {
    const context = asDrawn('laser-6');
    const jig = cornerDrillGuide.build('G1R', guideAt(0, 0), context);
    const circles = jig.pieces
      .filter(({ name }) => name.startsWith('layer-'))
      .map(({ holes }) => holes.find(({ purpose }) => purpose === 'bore')?.contour);
    expect(circles).toEqual(circles.map(() => ({ kind: 'circle', center: { x: 20, y: 14 }, radius: 2.5 })));
    expect(onlyBore(jig)).toMatchObject({ guided: 12, step: 0, edgeGap: 0, angle: 0, stop: 42 });
  });

  test('the depth stop is the way along the axis from the upper face, and a guide too thick is refused', () => {
    const jig = cornerDrillGuide.build('G1R', guideAt(30, 0), contextOf('laser-6'));
    const { stop, depth } = onlyBore(jig);
    expect(stop).toBeCloseTo((jig.parameters['thickness'] ?? NaN) / Math.cos(radians(30)) + (depth ?? 0), 9);
    expect(cornerDrillGuide.refuses({ ...guideAt(30, 0), guided: 120 }, contextOf('laser-6'))).toMatch(
      /^a guide thickness of .* is above the most, 90 mm$/,
    );
  });

  test('a router whose tool does not get round a leaning bore is refused one, and drills a straight one', () => {
    const context = contextOf('router');
    expect(cornerDrillGuide.refuses(guideAt(15, 0), context)).toMatch(
      /^a leaning bore of 5 mm .* bushing of/,
    );
    const jig = cornerDrillGuide.build('G1R', guideAt(0, 0), context);
    const [layer] = jig.pieces;
    if (layer === undefined) throw new Error('no layer');
    const { value, findings } = makePart(jig, layer, context.machine, STROKE_FONT);
    expect(findings).toEqual([]);
    const drilled = value.features.filter(({ operation }) => operation === 'drill');
    expect(drilled.map(({ contour }) => contour)).toContainEqual({
      kind: 'circle',
      center: { x: 20, y: 14 },
      radius: 2.5,
    });
  });
});
