import { describe, expect, test } from 'vitest';
import { offsetContour } from '../../core/geometry/offset.ts';
import { bounds } from '../../core/geometry/measure.ts';
import { rectangle } from '../../core/geometry/rectangle.ts';
import { segmentsOf } from '../../core/geometry/segments.ts';
import { fitOrder } from '../../core/fit/fit-order.ts';
import { parseLength } from '../../core/units/parse-length.ts';
import { compensate } from '../../core/parts/compensate.ts';
import type { Part } from '../../core/parts/types.ts';
import { readMachine } from '../jigs/setups.ts';
import { drawer } from '../rules/drawers.ts';
import { readStandard } from '../rules/read-standard.ts';

describe('kerf from a cut square', () => {
  // FabAcademy 2017 and a university laser lab, as quoted: hole and piece of one cut square, in mm.
  const cases = [
    { hole: 20.14, piece: 19.76, kerf: 0.19 },
    { hole: 20.09, piece: 19.86, kerf: 0.115 },
  ] as const;
  test.for(cases)('hole $hole and piece $piece tell a kerf of $kerf', ({ hole, piece, kerf }) => {
    expect((hole - piece) / 2).toBeCloseTo(kerf, 9);
    // A square drawn at their mean and cut on the line gives this piece and this hole.
    const drawn = rectangle((hole + piece) / 2, (hole + piece) / 2);
    const side = (offset: number) => {
      const [cut] = offsetContour(drawn, offset).value;
      if (cut === undefined) throw new Error('nothing is left');
      const { min, max } = bounds(cut);
      return max.x - min.x;
    };
    expect(side(-kerf / 2)).toBeCloseTo(piece, 9);
    expect(side(kerf / 2)).toBeCloseTo(hole, 9);
  });

  test.for(cases)(
    'compensate with a kerf of $kerf: the piece that is cut measures what was drawn',
    ({ kerf }) => {
      const drawn = rectangle(20, 20);
      const part: Part = {
        id: 'square',
        jig: 'square',
        title: 'square',
        copies: 1,
        thickness: 3,
        material: 'test',
        hand: null,
        features: [{ operation: 'cut-outer', contour: drawn }],
        sets: [],
      };
      const [followed] = compensate(part, { ...readMachine('laser-3'), kerf }).value;
      if (followed === undefined || followed.contour.kind === 'path') throw new Error('no path of the cut');
      const [piece] = offsetContour(followed.contour, -kerf / 2).value;
      if (piece === undefined) throw new Error('nothing is left');
      const { min, max } = bounds(piece);
      expect([max.x - min.x, max.y - min.y]).toEqual([expect.closeTo(20, 9), expect.closeTo(20, 9)]);
    },
  );
});

describe('bulge', () => {
  // DXF reference, group 42: tan(included angle / 4), negative clockwise; the values by arithmetic.
  const table = [
    [45, 0.198912367],
    [60, 0.267949192],
    [90, 0.414213562],
    [120, 0.57735027],
    [180, 1],
  ] as const;
  test.for(table)('of %d degrees is %d', ([degrees, bulge]) => {
    for (const sign of [1, -1]) {
      const [segment] = segmentsOf({
        kind: 'path',
        vertices: [
          { x: 0, y: 0, bulge: sign * bulge },
          { x: 10, y: 0, bulge: 0 },
        ],
      });
      if (segment?.kind !== 'arc') throw new Error('no arc');
      expect((segment.sweep * 180) / Math.PI).toBeCloseTo(sign * degrees, 5);
    }
  });
});

describe('inches', () => {
  // ASME B94.11M as a public drill table has it: the letter E is 1/4 in exactly; jobber fractions are n/64 in.
  test('parseLength: 1/4 is the letter drill E, .250 in', () => {
    expect(parseLength('1/4', { unit: 'in' })).toEqual(parseLength('.250', { unit: 'in' }));
  });

  test('parseLength: n/64 is n times 0.015625 in for every jobber drill', () => {
    for (let n = 1; n <= 64; n += 1) {
      const read = parseLength(`${n}/64`, { unit: 'in' });
      expect(read.ok && read.mm).toBeCloseTo(n * 0.015625 * 25.4, 12);
    }
  });
});

describe('side-mount slides', () => {
  // Common practice, no source: 1/2 in of space on either side, so a box is 1 in narrower than its opening.
  test('fitOrder: the box is 1 in narrower than the opening', () => {
    const standard = readStandard('face-frame-side-mount.json');
    const [style] = standard.styles;
    const drawers = [drawer({ style: style?.name ?? '', openingW: 18 * 25.4, openingH: 6 * 25.4 })];
    const [fit] = fitOrder({ name: 'check', unit: 'in', drawers }, standard).value;
    expect(fit?.boxW).toBeCloseTo(17 * 25.4, 9);
    expect(fit?.runningClearance).toBeCloseTo(12.7, 9);
  });
});
