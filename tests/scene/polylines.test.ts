import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { polylines } from '../../core/scene/polylines.ts';

const at = (x: number, y: number) => ({ x, y });

describe('polylines', () => {
  it('joins the sides of a square to one stroke that closes', () => {
    const [a, b, c, d] = [at(0, 0), at(1, 0), at(1, 1), at(0, 1)];
    expect(
      polylines([
        [a, b],
        [b, c],
        [c, d],
        [d, a],
      ]),
    ).toEqual([[a, b, c, d, a]]);
  });

  it('draws a line once, whichever way it is given, and leaves apart what does not meet', () => {
    const [a, b, c, d] = [at(0, 0), at(1, 0), at(5, 5), at(6, 5)];
    expect(
      polylines([
        [a, b],
        [b, a],
        [c, d],
        [a, b],
      ]),
    ).toEqual([
      [a, b],
      [c, d],
    ]);
  });

  it('draws each line of any set once and nothing else', () => {
    const point = fc.record({ x: fc.integer({ min: 0, max: 4 }), y: fc.integer({ min: 0, max: 4 }) });
    const keyOf = ([a, b]: readonly { readonly x: number; readonly y: number }[]): string =>
      [a, b]
        .map((one) => `${one?.x} ${one?.y}`)
        .toSorted()
        .join(' to ');
    fc.assert(
      fc.property(fc.array(fc.tuple(point, point), { maxLength: 30 }), (lines) => {
        const drawn = polylines(lines).flatMap((stroke) =>
          stroke.slice(1).map((end, index) => keyOf([stroke[index] ?? end, end])),
        );
        expect(drawn.toSorted()).toEqual([...new Set(lines.map(keyOf))].toSorted());
      }),
    );
  });
});
