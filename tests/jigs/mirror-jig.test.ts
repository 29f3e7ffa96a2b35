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
