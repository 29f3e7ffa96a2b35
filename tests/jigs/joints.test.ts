import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { bounds } from '../../core/geometry/measure.ts';
import type { Point } from '../../core/geometry/types.ts';
import { jointHoles, jointPlaces } from '../../core/jigs/joint.ts';
import { bottomFence } from '../../core/jigs/kinds/bottom-fence.ts';
import { cornerFence } from '../../core/jigs/kinds/corner-fence.ts';
import { sideSpacer } from '../../core/jigs/kinds/side-spacer.ts';
import type { Jig, Piece } from '../../core/jigs/types.ts';
import { contextOf, MACHINE_NAMES, setup } from './setups.ts';

interface Mark extends Point {
  readonly width: number;
  readonly height: number;
}

/** Centre and size of each hole that a pin or key goes through. */
const marks = (piece: Piece): readonly Mark[] =>
  piece.holes
    .filter(({ purpose }) => purpose === 'joint')
    .map(({ contour }) => {
      const { min, max } = bounds(contour);
      return { x: (min.x + max.x) / 2, y: (min.y + max.y) / 2, width: max.x - min.x, height: max.y - min.y };
    });

const distances = (points: readonly Point[]): readonly number[] =>
  points.flatMap((a, i) => points.slice(i + 1).map((b) => Math.hypot(a.x - b.x, a.y - b.y)));

/** mm. More than any fit allowance gives. */
const NOTICED = 0.4;

const JIGS: readonly (readonly [string, Jig])[] = MACHINE_NAMES.flatMap((machine) => {
  const context = contextOf(machine);
  const flank = setup({ edge: 'right', overhang: 36.5, edgeLength: 160 });
  return [
    [`bottom fence on ${machine}`, bottomFence.build('B1', [setup()], context)],
    [`side spacer on ${machine}`, sideSpacer.build('S1', [flank], context)],
    [`corner fence on ${machine}`, cornerFence.build('C1', [setup(), flank], context)],
  ] as const;
});

describe('joints', () => {
  test.for(JIGS)('%s: lip and plate have their holes in the same places', ([, jig]) => {
    const [plate, ...lips] = jig.pieces.filter(({ holes }) => holes.length > 0);
    expect(plate).toBeDefined();
    for (const lip of lips) expect(marks(lip)).toEqual(plate === undefined ? [] : marks(plate));
  });

  test.for(JIGS)('%s: no turn and no flip brings the three holes onto each other', ([, jig]) => {
    for (const piece of jig.pieces.filter(({ holes }) => holes.length > 0)) {
      const holes = marks(piece);
      expect(holes).toHaveLength(3);
      // A scalene triangle has no symmetry of its own: only the identity keeps all three distances.
      const [a = 0, b = 0, c = 0] = distances(holes);
      expect(Math.abs(a - b)).toBeGreaterThan(NOTICED);
      expect(Math.abs(b - c)).toBeGreaterThan(NOTICED);
      expect(Math.abs(a - c)).toBeGreaterThan(NOTICED);
      // Nor do they lie on a line, about which a flip would leave them in place.
      const [p, q, r] = holes;
      if (p === undefined || q === undefined || r === undefined) throw new Error('no holes');
      const twiceArea = Math.abs((q.x - p.x) * (r.y - p.y) - (r.x - p.x) * (q.y - p.y));
      expect(twiceArea / Math.max(a, b, c)).toBeGreaterThan(1);
    }
  });

  test('jointHoles: keys differ in width, so that each fits its own slot only', () => {
    const { machine } = contextOf('laser-6');
    const holes = jointHoles(jointPlaces(160, -9.75), machine);
    const widths = holes.map(({ contour }) => bounds(contour).max.x - bounds(contour).min.x);
    expect(widths.map((width) => width - machine.fit.slot)).toEqual(
      [12, 10, 8].map((w) => expect.closeTo(w, 9)),
    );
  });

  test('jointHoles: a slot has the fit allowance over the sheet that goes into it, a pin hole over the pin', () => {
    const keyed = contextOf('laser-6').machine;
    const [slot] = jointHoles(jointPlaces(160, 0), keyed);
    if (slot === undefined) throw new Error('no slot');
    const box = bounds(slot.contour);
    expect(box.max.y - box.min.y).toBeCloseTo(keyed.sheet.thickness + keyed.fit.slot, 9);
    const pinned = contextOf('none').machine;
    const [hole] = jointHoles(jointPlaces(160, 0), pinned);
    expect(hole?.contour).toMatchObject({ kind: 'circle', radius: (6 + 0.1) / 2 });
  });

  property.prop([fc.double({ min: 60, max: 400, noNaN: true })], { seed: 20_261_127, numRuns: 200 })(
    'jointPlaces: the two patterns of a block differ however the lips are turned',
    (length) => {
      const sides = (pattern: 'first' | 'second') =>
        distances(jointPlaces(length, 0, pattern)).toSorted((a, b) => a - b);
      const [first, second] = [sides('first'), sides('second')];
      const differences = first.map((side, index) => Math.abs(side - (second[index] ?? NaN)));
      expect(Math.max(...differences)).toBeGreaterThan(NOTICED);
    },
  );
});
