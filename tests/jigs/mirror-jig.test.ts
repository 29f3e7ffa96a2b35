import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { signedArea } from '../../core/geometry/measure.ts';
import { cornerFence } from '../../core/jigs/kinds/corner-fence.ts';
import { mirrorJig } from '../../core/jigs/mirror-jig.ts';
import { contextOf, MACHINE_NAMES, setup } from './setups.ts';

const flank = (edge: 'left' | 'right') => setup({ edge, overhang: 21.5, edgeLength: 140 });

describe('mirrorJig', () => {
  test.for(MACHINE_NAMES)('on %s: twice is the identity', (name) => {
    const jig = cornerFence.build('C1', [setup(), flank('right')], contextOf(name));
    expect(mirrorJig(mirrorJig(jig))).toEqual(jig);
  });

  property.prop(
    [
      fc.double({ min: 0.5, max: 60, noNaN: true }),
      fc.double({ min: 12, max: 60, noNaN: true }),
      fc.double({ min: 0, max: 5, noNaN: true }),
      fc.constantFrom(...MACHINE_NAMES),
    ],
    { seed: 20_261_133, numRuns: 120 },
  )('twice is the identity for any fence that can be built', (sideOverhang, bottom, backBevel, name) => {
    const setups = [
      setup({ overhang: bottom, backBevel }),
      setup({ edge: 'right', overhang: sideOverhang, edgeLength: 200, backBevel }),
    ];
    const context = contextOf(name);
    if (cornerFence.refuses(setups, context) !== null) return;
    const jig = cornerFence.build('C1', setups, context);
    expect(mirrorJig(mirrorJig(jig))).toEqual(jig);
  });

  test('changes the hand and keeps areas, holes and the order of text', () => {
    const right = cornerFence.build('C1', [setup(), flank('right')], contextOf('laser-6'));
    const left = mirrorJig(right);
    expect([right.hand, left.hand]).toEqual(['right', 'left']);
    for (const [index, piece] of right.pieces.entries()) {
      const twin = left.pieces[index];
      if (twin === undefined) throw new Error('a piece is lost');
      expect(signedArea(twin.outline)).toBeCloseTo(signedArea(piece.outline), 6);
      expect(twin.holes.map(({ contour }) => Math.abs(signedArea(contour)))).toEqual(
        piece.holes.map(({ contour }) => expect.closeTo(Math.abs(signedArea(contour)), 6)),
      );
      expect(twin.labels.map(({ phrases }) => phrases)).toEqual(piece.labels.map(({ phrases }) => phrases));
    }
  });

  test('a left fence built for the left edge is labelled so, and points to the cabinet’s left', () => {
    const left = cornerFence.build('C1L', [setup(), flank('left')], contextOf('laser-6'));
    const [plate] = left.pieces;
    expect(left.hand).toBe('left');
    expect(plate?.labels[0]?.phrases).toEqual(
      expect.arrayContaining(['CABINET LEFT CORNER', '→ CABINET LEFT']),
    );
  });
});
