import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { bounds, signedArea } from '../../../core/geometry/measure.ts';
import { offsetContour } from '../../../core/geometry/offset.ts';
import type { ClosedContour, Point } from '../../../core/geometry/types.ts';
import { cornerDrillGuide } from '../../../core/jigs/aids/corner-drill-guide.ts';
import { AID_KINDS } from '../../../core/jigs/aids/kinds.ts';
import type { GuideSetup } from '../../../core/jigs/aids/types.ts';
import { mirrorJig } from '../../../core/jigs/mirror-jig.ts';
import type { Jig, Piece } from '../../../core/jigs/types.ts';
import { contextOf, MACHINE_NAMES } from '../setups.ts';
import { partFaults, pieceOf } from './pieces.ts';

const base = (end: 'bottom' | 'top'): 'left' | 'right' => (end === 'bottom' ? 'right' : 'left');

const setupOf = (given: Partial<GuideSetup> = {}): GuideSetup => ({
  hand: 'right',
  end: 'bottom',
  places: [{ index: 0, at: { x: 22, y: 13 }, slope: { x: 0.2, y: 0.1 }, depth: 28.6 }],
  bit: 2.778,
  bore: 2.905,
  play: 0.127,
  bushed: false,
  guided: 5.6,
  screws: ['#8 x 1 in pan'],
  boxFront: 15.875,
  room: { x: 340, y: 120 },
  ...given,
});

const laser = contextOf('laser-6');
const router = contextOf('router');
const straight = [{ index: 0, at: { x: 22, y: 13 }, slope: { x: 0, y: 0 }, depth: 28.6 }];

const middleOf = (contour: ClosedContour): Point => {
  const { min, max } = bounds(contour);
  return { x: (min.x + max.x) / 2, y: (min.y + max.y) / 2 };
};

const boreIn = (piece: Piece): ClosedContour => {
  const hole = piece.holes.find(({ purpose }) => purpose === 'bore');
  if (hole === undefined) throw new Error('no bore');
  return hole.contour;
};

/** A contour after a cut so much wider than was compensated: outlines lose half of it, holes gain half. */
function cutWider(contour: ClosedContour, kerf: number, outer: boolean): ClosedContour {
  if (kerf === 0) return contour;
  const [cut] = offsetContour(contour, ((outer ? -1 : 1) * kerf) / 2).value;
  if (cut === undefined) throw new Error('nothing left');
  return cut;
}

/** Where the bore of layer 2 is from the faces that register, measured on parts that were cut so much wider. */
function boreFromFaces(jig: Jig, end: 'bottom' | 'top', kerf: number): Point {
  const layer = pieceOf(jig, 'layer-2');
  const outline = bounds(cutWider(layer.outline, kerf, true));
  const bore = middleOf(cutWider(boreIn(layer), kerf, false));
  // At a top corner the lip registers; its joints, which are centres of holes, tie it to the layer.
  const endFace =
    end === 'bottom' ? outline.min.y : bounds(cutWider(pieceOf(jig, 'lip').outline, kerf, true)).max.y;
  return { x: bore.x - outline.min.x, y: bore.y - endFace };
}

describe('the kerf', () => {
  property.prop(
    [fc.double({ min: 0.02, max: 0.5, noNaN: true }), fc.constantFrom('bottom' as const, 'top' as const)],
    { seed: 20_261_203, numRuns: 60 },
  )('moves a bore by half of what was not compensated, the way that the guide says', (kerf, end) => {
    const jig = cornerDrillGuide.build('G1', setupOf({ end, hand: base(end) }), laser);
    const [nominal, cut] = [boreFromFaces(jig, end, 0), boreFromFaces(jig, end, kerf)];
    const { kerfShift } = jig.drilling ?? never();
    expect(cut.x - nominal.x).toBeCloseTo(kerfShift.x * kerf, 6);
    expect(cut.y - nominal.y).toBeCloseTo(kerfShift.y * kerf, 6);
    expect(Math.abs(kerfShift.x)).toBe(jig.sensitivity.kerf);
    expect(Math.abs(kerfShift.y)).toBe(jig.sensitivity.kerf);
    const width = (contour: ClosedContour) => bounds(contour).max.y - bounds(contour).min.y;
    const bore = boreIn(pieceOf(jig, 'layer-2'));
    expect(width(cutWider(bore, kerf, false)) - width(bore)).toBeCloseTo(kerf, 6);
  });
});

describe('the sheet thickness', () => {
  property.prop([fc.double({ min: -0.4, max: 0.4, noNaN: true })], { seed: 20_261_204, numRuns: 60 })(
    'leaves a bore where it enters the box front, and changes its lean',
    (off) => {
      const jig = cornerDrillGuide.build('G1', setupOf(), laser);
      const [bore] = jig.drilling?.bores ?? [];
      if (bore === undefined) throw new Error('no bore');
      const t = laser.machine.sheet.thickness + off;
      const middles = jig.pieces
        .filter(({ name }) => name.startsWith('layer-'))
        .map((piece, layer) => ({ height: (layer + 0.5) * t, ...middleOf(boreIn(piece)) }));
      const [first, last] = [middles[0], middles.at(-1)];
      if (first === undefined || last === undefined) throw new Error('no layers');
      const slope = (last.x - first.x) / (last.height - first.height);
      expect(first.x - slope * first.height).toBeCloseTo(bore.at.x, 6);
      expect(slope).toBeCloseTo((bore.slope.x * laser.machine.sheet.thickness) / t, 6);
      expect(jig.sensitivity.sheetThickness).toBe(0);
    },
  );
});

describe('what a drill guide is built from', () => {
  test.for(['bottom', 'top'] as const)(
    'at a %s corner: what says the same is built alike, in any room',
    (end) => {
      // Bores at both ends leave a short guide for labels, so that the box's width is felt; one alone does not.
      const near = setupOf().places;
      const far = [...near, { index: 1, at: { x: 130, y: 13 }, slope: { x: 0.2, y: 0.1 }, depth: 28.6 }];
      const builds = [near, far].flatMap((places) =>
        [172, 200, 240, 300, 400, 600].flatMap((x) =>
          [24, 29, 120].flatMap((y) => {
            const setup = setupOf({ end, hand: base(end), places, room: { x, y } });
            if (cornerDrillGuide.refuses(setup, laser) !== null) return [];
            const from = JSON.stringify(cornerDrillGuide.builtFrom?.(setup, laser));
            return [{ from, jig: JSON.stringify(cornerDrillGuide.build('G1', setup, laser)) }];
          }),
        ),
      );
      const jigs = new Set(builds.map(({ jig }) => jig));
      expect(new Set(builds.map(({ from }) => from)).size).toBe(jigs.size);
      expect(new Set(builds.map(({ from, jig }) => from + jig)).size).toBe(jigs.size);
      expect(jigs.size).toBeGreaterThan(2);
      expect(jigs.size).toBeLessThan(builds.length / 2);
    },
  );
});

describe('mirrorJig of a drill guide', () => {
  test.for(MACHINE_NAMES)('on %s: twice is the identity, and the hand changes', (name) => {
    for (const end of ['bottom', 'top'] as const) {
      const places = name === 'router' ? straight : setupOf().places;
      const jig = cornerDrillGuide.build('G1', setupOf({ end, hand: base(end), places }), contextOf(name));
      expect(mirrorJig(mirrorJig(jig))).toEqual(jig);
      expect(mirrorJig(jig).hand).toBe(base(end) === 'left' ? 'right' : 'left');
    }
  });

  test('the other hand has every outline and hole at -x, and its bores too', () => {
    for (const end of ['bottom', 'top'] as const) {
      const one = cornerDrillGuide.build('G1', setupOf({ end, hand: base(end) }), laser);
      const other = cornerDrillGuide.build(
        'G1',
        setupOf({ end, hand: base(end) === 'left' ? 'right' : 'left' }),
        laser,
      );
      for (const piece of one.pieces) {
        const twin = pieceOf(other, piece.name);
        const pairs = [
          [piece.outline, twin.outline] as const,
          ...piece.holes.map((hole, index) => [hole.contour, twin.holes[index]?.contour ?? never()] as const),
        ];
        for (const [a, b] of pairs) {
          const [left, right] = [bounds(a), bounds(b)];
          expect(right.min.x).toBeCloseTo(-left.max.x, 9);
          expect(right.max.y).toBeCloseTo(left.max.y, 9);
          expect(Math.abs(signedArea(b))).toBeCloseTo(Math.abs(signedArea(a)), 6);
        }
      }
      const [a, b] = [one.drilling?.bores[0], other.drilling?.bores[0]];
      expect(b?.at.x).toBe(-(a?.at.x ?? NaN));
      expect(b?.slope.x).toBe(-(a?.slope.x ?? NaN));
      expect(b?.at.y).toBe(a?.at.y);
    }
  });
});

/** Middle and size of each hole that a pin or key goes through. */
const joints = (piece: Piece) =>
  piece.holes
    .filter(({ purpose }) => purpose === 'joint')
    .map(({ contour }) => ({ ...middleOf(contour), ...bounds(contour) }));

describe('the joints of a drill guide', () => {
  test.for(MACHINE_NAMES)(
    'on %s: go through all layers at the same places, which no turn or flip brings onto each other',
    (name) => {
      for (const end of ['bottom', 'top'] as const) {
        const places = name === 'router' ? straight : setupOf().places;
        const jig = cornerDrillGuide.build('G1', setupOf({ end, hand: base(end), places }), contextOf(name));
        const sheets = jig.pieces.filter(({ holes }) => holes.length > 0);
        const [first] = sheets;
        if (first === undefined) throw new Error('no layers');
        expect(sheets.length).toBeGreaterThan(1);
        for (const sheet of sheets) expect(joints(sheet)).toEqual(joints(first));
        const [a, b, c] = joints(first);
        if (a === undefined || b === undefined || c === undefined) throw new Error('three joints');
        const sides = [
          Math.hypot(a.x - b.x, a.y - b.y),
          Math.hypot(b.x - c.x, b.y - c.y),
          Math.hypot(a.x - c.x, a.y - c.y),
        ].toSorted((x, y) => x - y);
        const [short = 0, middle = 0, long = 0] = sides;
        expect(middle - short).toBeGreaterThan(0.4);
        expect(long - middle).toBeGreaterThan(0.4);
        const area = Math.abs((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y));
        expect(area / long).toBeGreaterThan(1);
      }
    },
  );

  test.for(MACHINE_NAMES)('on %s: every hole has wood round it', (name) => {
    for (const end of ['bottom', 'top'] as const) {
      const places = name === 'router' ? straight : setupOf().places;
      // The narrowest box that still takes a guide has the least room for holes.
      for (const width of [340, 104]) {
        const setup = setupOf({ end, hand: base(end), places, room: { x: width, y: 120 } });
        const jig = cornerDrillGuide.build('G1', setup, contextOf(name));
        for (const piece of jig.pieces) {
          const outline = bounds(piece.outline);
          const boxes = piece.holes.map(({ contour }) => bounds(contour));
          for (const [index, hole] of boxes.entries()) {
            const walls = [
              hole.min.x - outline.min.x,
              outline.max.x - hole.max.x,
              hole.min.y - outline.min.y,
              outline.max.y - hole.max.y,
              ...boxes
                .slice(index + 1)
                .map((other) =>
                  Math.max(
                    other.min.x - hole.max.x,
                    hole.min.x - other.max.x,
                    other.min.y - hole.max.y,
                    hole.min.y - other.max.y,
                  ),
                ),
            ];
            expect({ piece: piece.name, width, wall: Math.min(...walls) > 1.9 }).toEqual({
              piece: piece.name,
              width,
              wall: true,
            });
          }
        }
      }
    }
  });
});

const wordsOf = (piece: Piece): string =>
  piece.labels.flatMap(({ title, phrases }) => [title ?? '', ...phrases]).join(' | ');

describe('the labels of a drill guide', () => {
  test('say what it is, which layer, hand, corner, bit, screw, thickness and stop, order and date', () => {
    const jig = cornerDrillGuide.build('G4R', setupOf(), laser);
    const top = wordsOf(pieceOf(jig, 'layer-3'));
    for (const words of [
      'G4R  LAYER 3 OF 3',
      'CORNER DRILL GUIDE',
      'RIGHT BOTTOM CORNER OF BOX',
      '← SIDE',
      '↓ BOTTOM',
      '→ CABINET LEFT',
      'BIT 7/64"',
      'LEAN 12.6°',
      '#8 x 1 in pan',
      'GUIDE 18 mm',
      'test order',
      '2031-05-20',
    ]) {
      expect(top).toContain(words);
    }
    // 18 mm of guide and 28.6 mm beyond, down to the next 1/64 in: (18 / cos 12.604 deg + 28.6) / 25.4 = 1.8521 in.
    expect(top).toContain('STOP 1 27/32"');
    expect(wordsOf(pieceOf(jig, 'layer-1'))).toContain('LAYER 1 OF 3');
  });

  test('point to the side that the guide registers on, and to the cabinet’s left, on all four corners', () => {
    const arrows = (hand: 'left' | 'right', end: 'bottom' | 'top') => {
      const jig = cornerDrillGuide.build('G1', setupOf({ hand, end }), laser);
      const layer = pieceOf(jig, 'layer-2');
      const { min, max } = bounds(layer.outline);
      // The registering side is at x = 0.
      const side = Math.abs(min.x) < Math.abs(max.x) ? '← SIDE' : 'SIDE →';
      expect(wordsOf(layer)).toContain(side);
      return /(.) CABINET LEFT/u.exec(wordsOf(layer))?.[1];
    };
    // Back view: the cabinet's left is at +x. A guide at the top is turned half about.
    expect(arrows('right', 'bottom')).toBe('→');
    expect(arrows('left', 'bottom')).toBe('→');
    expect(arrows('right', 'top')).toBe('←');
    expect(arrows('left', 'top')).toBe('←');
  });

  test.for(MACHINE_NAMES)('on %s: every stroke is clear of outline and holes', (name) => {
    const context = contextOf(name);
    for (const end of ['bottom', 'top'] as const) {
      const places = [
        ...(name === 'router' ? straight : setupOf().places),
        { index: 1, at: { x: 180, y: 13 }, slope: { x: 0, y: 0 }, depth: 28.6 },
      ];
      const jig = cornerDrillGuide.build('G1L', setupOf({ hand: 'left', end, places }), context);
      expect(partFaults(jig, context)).toEqual([]);
    }
  });
});

describe('cornerDrillGuide.refuses', () => {
  test('a bore too near a face, a box too narrow or too low, a box front too thin for a lip', () => {
    const near = [{ index: 0, at: { x: 3, y: 13 }, slope: { x: 0, y: 0 }, depth: 28.6 }];
    expect(cornerDrillGuide.refuses(setupOf({ places: near }), laser)).toMatch(
      /^a bore comes within 1\.5\d* mm of a face .* it needs 2\.7 mm of wood$/,
    );
    expect(cornerDrillGuide.refuses(setupOf({ room: { x: 80, y: 120 } }), laser)).toMatch(
      /^a box 80 mm wide inside leaves no room/,
    );
    expect(
      cornerDrillGuide.refuses(setupOf({ hand: 'left', end: 'top', room: { x: 340, y: 15 } }), laser),
    ).toMatch(/^a guide at the top edge needs .* and there are 15 mm$/);
    expect(cornerDrillGuide.refuses(setupOf({ hand: 'left', end: 'top', boxFront: 6 }), laser)).toMatch(
      /^over the box front, a sheet of 6 mm is too thick for a lip/,
    );
    expect(cornerDrillGuide.refuses(setupOf({ places: [] }), laser)).toBe(
      'there is no screw to guide a bit for',
    );
    expect(cornerDrillGuide.refuses(setupOf({ places: straight }), router)).toBeNull();
  });

  test('a build that was refused throws', () => {
    expect(() => cornerDrillGuide.build('G1', setupOf({ places: [] }), laser)).toThrow(RangeError);
  });
});

describe('AID_KINDS', () => {
  test.for(AID_KINDS)(
    '$name says how it goes together and is used, and limits its parameters',
    ({ assembly, use, parameters, code }) => {
      expect(code).toMatch(/^[A-Z]$/);
      expect(assembly.length).toBeGreaterThan(40);
      expect(use).toMatch(/press/);
      expect(use).toMatch(/clamp/);
      for (const { min, max, meaning } of parameters) {
        expect(max).toBeGreaterThan(min);
        expect(meaning.length).toBeGreaterThan(5);
      }
    },
  );
});

function never(): never {
  throw new Error('missing');
}
