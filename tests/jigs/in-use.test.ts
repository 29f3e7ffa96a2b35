import { describe, expect, test } from 'vitest';
import { bounds } from '../../core/geometry/measure.ts';
import type { PathContour } from '../../core/geometry/types.ts';
import { JIG_KINDS } from '../../core/jigs/kinds.ts';
import { bottomFence } from '../../core/jigs/kinds/bottom-fence.ts';
import { cornerFence } from '../../core/jigs/kinds/corner-fence.ts';
import { sideSpacer } from '../../core/jigs/kinds/side-spacer.ts';
import { stepProfile } from '../../core/jigs/kinds/step-profile.ts';
import type { Jig, Setup } from '../../core/jigs/types.ts';
import { makePart } from '../../core/parts/make-part.ts';
import { strokeText } from '../../core/parts/stroke-text.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { contextOf, MACHINE_NAMES, setup } from './setups.ts';

const laser = contextOf('laser-6');
const side = (given: Partial<Setup> = {}): Setup =>
  setup({ edge: 'left', overhang: 36.5125, edgeLength: 150, boxLength: 120, ...given });

const piece = (jig: Jig, name: string) => {
  const found = jig.pieces.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
};

/** Longest stretch of a plate's working edge, at its greatest y, without a recess. */
function unbrokenEdge(jig: Jig): number {
  const { vertices } = piece(jig, 'plate').outline;
  const top = Math.max(...vertices.map(({ y }) => y));
  const lengths = vertices.map((from, index) => {
    const to = vertices[(index + 1) % vertices.length] ?? from;
    const along = Math.abs(from.y - top) < 1e-9 && Math.abs(to.y - top) < 1e-9 && from.bulge === 0;
    return along ? Math.abs(to.x - from.x) : 0;
  });
  return Math.max(...lengths);
}

describe('a plate and its box', () => {
  test('a box as long as the plate bears on two lands; a shorter one cannot drop between them', () => {
    const long = sideSpacer.build('S1', [side()], laser);
    const low = sideSpacer.build('S1', [side({ boxLength: 50.8 })], laser);
    const plate = bounds(piece(low, 'plate').outline);
    expect(unbrokenEdge(long)).toBeLessThan(40);
    expect(unbrokenEdge(low)).toBeGreaterThan(plate.max.x - plate.min.x - 4);
  });

  test('a plate is no longer than what a slide leaves of the box side; where that is too little, none is built', () => {
    const passing = sideSpacer.build('S1', [side({ clearLength: 64 })], laser);
    const plate = bounds(piece(passing, 'plate').outline);
    expect(plate.max.x - plate.min.x).toBeLessThanOrEqual(64);
    expect(sideSpacer.refuses([side({ clearLength: 43 })], laser)).toMatch(
      /^a block of 63 mm is below the least, 80 mm/,
    );
  });
});

describe('a step profile', () => {
  const jig = stepProfile.build('P1', [side({ overhang: 2.38125 })], laser);

  test('cannot be used upside down: above its face it only slopes away, with no second step', () => {
    const { vertices } = piece(jig, 'profile').outline;
    const face = jig.parameters['face'] ?? Number.NaN;
    const above = vertices.filter(({ x, y }) => y > face - 1e-9 && x > -30);
    // From the face's upper end to the top, one straight slope of 45 degrees.
    expect(above).toHaveLength(2);
    const [from, to] = above;
    expect(Math.abs((to?.y ?? 0) - (from?.y ?? 0))).toBeCloseTo(Math.abs((to?.x ?? 0) - (from?.x ?? 0)), 9);
  });

  test('at a bottom edge its face stays on the box front', () => {
    const bottom = stepProfile.build('P2', [setup({ overhang: 8, boxReach: 12 })], laser);
    expect(bottom.parameters['face']).toBe(12);
    expect(stepProfile.refuses([setup({ overhang: 8, boxReach: 3 })], laser)).toBe(
      'a face on the box of 3 mm is below the least, 6 mm',
    );
  });
});

/** The strokes of a text somewhere in a part, and where it points: from its middle to its last stroke's middle. */
const strokesOf = (text: string): number =>
  strokeText(STROKE_FONT, text, { capHeight: 5, at: { x: 0, y: 0 }, align: 'left' }).value.contours.length;

describe('the arrow to the cabinet’s left', () => {
  const cases: readonly (readonly [string, number, number])[] = [
    ['upright', 50.8, 36.5],
    ['in a label that is turned', 17.5, 36.5],
  ];
  test.for(cases)('%s, points to +x of the back view', ([, bottom, flank]) => {
    const jig = cornerFence.build('C1L', [setup({ overhang: bottom }), side({ overhang: flank })], {
      ...laser,
      order: [],
    });
    const [label] = piece(jig, 'plate').labels;
    const phrase = label?.phrases.find(
      (words) => words.includes('CABINET LEFT') && !words.startsWith('CABINET'),
    );
    const glyph = (phrase ?? '').slice(0, 1);
    // Drawn by itself and turned as the label is, the arrow's point is where its strokes meet.
    const drawn = makePart(
      {
        ...jig,
        pieces: [],
      },
      { ...piece(jig, 'plate'), labels: [{ ...(label ?? fail()), title: '', phrases: [glyph] }] },
      laser.machine,
      STROKE_FONT,
    ).value.features.flatMap(({ operation, contour }) =>
      operation === 'engrave' && contour.kind === 'path' ? [contour] : [],
    );
    expect(drawn.length).toBe(strokesOf(glyph));
    expect(pointsTo(drawn)).toEqual({ x: 1, y: 0 });
  });
});

function fail(): never {
  throw new Error('no label');
}

/** The direction in which an arrow points: towards the side on which its box has the head's ends converge. */
function pointsTo(strokes: readonly PathContour[]): { readonly x: number; readonly y: number } {
  const { min, max } = bounds(...strokes);
  const [width, height] = [max.x - min.x, max.y - min.y];
  const ends = strokes.flatMap(({ vertices }) => vertices);
  const near = (value: number, to: number) => Math.abs(value - to) < 0.05 * Math.max(width, height);
  if (width > height) {
    const right = ends.filter(({ x }) => near(x, max.x));
    const spread = Math.max(...right.map(({ y }) => y)) - Math.min(...right.map(({ y }) => y));
    return { x: spread < 0.2 * height ? 1 : -1, y: 0 };
  }
  const top = ends.filter(({ y }) => near(y, max.y));
  const spread = Math.max(...top.map(({ x }) => x)) - Math.min(...top.map(({ x }) => x));
  return { x: 0, y: spread < 0.2 * width ? 1 : -1 };
}

describe('labels', () => {
  test.for(MACHINE_NAMES)('on %s: every stroke is inside its outline, 1 mm from any cut', (name) => {
    const context = contextOf(name);
    const jigs = [
      bottomFence.build('B1', [setup({ overhang: 12.7 })], context),
      sideSpacer.build('S1', [side({ overhang: 22.225 })], context),
      stepProfile.build('P1', [side({ overhang: 2.38125, backBevel: 3 })], context),
      cornerFence.build('C1L', [setup(), side()], context),
      cornerFence.build('C2R', [setup({ overhang: 17.5 }), side({ edge: 'right' })], context),
      ...(sideSpacer.refuses([side(), side({ overhang: 17.4625 })], context) === null
        ? [sideSpacer.build('S2', [side(), side({ overhang: 17.4625 })], context)]
        : []),
    ];
    for (const jig of jigs) {
      for (const one of jig.pieces) {
        const { features } = makePart(jig, one, context.machine, STROKE_FONT).value;
        const strokes = features
          .filter(({ operation }) => operation === 'engrave')
          .map(({ contour }) => contour);
        expect(strokes.length).toBeGreaterThan(0);
        const text = bounds(...strokes);
        const outline = bounds(one.outline);
        const label = `${jig.id}-${one.name}`;
        expect({
          label,
          inside: text.min.x > outline.min.x + 0.9 && text.max.x < outline.max.x - 0.9,
        }).toEqual({ label, inside: true });
        expect({
          label,
          inside: text.min.y > outline.min.y + 0.9 && text.max.y < outline.max.y - 0.9,
        }).toEqual({ label, inside: true });
      }
    }
  });

  test('say what it is, the overhang, the order and the date on every part but the keys', () => {
    const jigs = [
      bottomFence.build('B1', [setup()], laser),
      sideSpacer.build('S1', [side()], laser),
      stepProfile.build('P1', [side({ overhang: 2.38125 })], laser),
      cornerFence.build('C1L', [setup(), side()], laser),
    ];
    for (const jig of jigs) {
      const [first] = jig.pieces;
      const words = (first?.labels ?? [])
        .flatMap(({ title, phrases }) => [title ?? '', ...phrases])
        .join(' ');
      expect(words).toContain(jig.id);
      expect(words).toContain(jig.kind.toUpperCase());
      expect(words).toContain('test order');
      expect(words).toContain('2031-05-20');
      for (const lip of jig.pieces.filter(({ name }) => name === 'lip')) {
        const said = lip.labels.flatMap(({ phrases }) => phrases).join(' ');
        expect(said).toMatch(/LIP/);
        expect(said).toMatch(/"/);
        expect(said).toContain('2031-05-20');
      }
    }
  });

  test('tell jigs for bevelled fronts of different thickness apart', () => {
    const words = (frontThickness: number) =>
      bottomFence.build('B1', [setup({ backBevel: 3, frontThickness })], laser).pieces[0]?.labels[0]?.phrases;
    expect(words(19.05)).toContain('FRONT 3/4"');
    expect(words(25.4)).toContain('FRONT 1"');
  });

  test('of a block of two widths show, on the lip that lies on top, the overhang that the other lip sets', () => {
    const block = sideSpacer.build('S1', [side(), side({ overhang: 17.4625 })], laser);
    expect(piece(block, 'lip-narrow').labels[0]?.title).toBe('1 7/16"');
    expect(piece(block, 'lip-wide').labels[0]?.title).toBe('11/16"');
    expect(piece(block, 'plate').labels.flatMap(({ phrases }) => phrases)).toContain(
      'LIP 1 7/16" ON THIS FACE',
    );
  });
});

describe('every jig kind', () => {
  test.for(JIG_KINDS)('$name says how it goes together and is used', ({ assembly, use, parameters }) => {
    expect(assembly.length).toBeGreaterThan(40);
    expect(use).toMatch(/press/);
    for (const { min, max, meaning } of parameters) {
      expect(max).toBeGreaterThan(min);
      expect(meaning.length).toBeGreaterThan(5);
    }
  });

  test('lists the pins that must be bought where layers are pinned, and none where they are keyed', () => {
    expect(bottomFence.build('B1', [setup()], contextOf('none')).pins).toEqual([
      { count: 3, diameter: 6, length: 18 },
    ]);
    expect(bottomFence.build('B1', [setup()], laser).pins).toEqual([]);
  });
});
