import type { Piece } from './chain.ts';
import { distanceToSegment } from './distance.ts';
import type { Point } from './types.ts';
import { midpoint } from './vector.ts';

/** mm. A side further than this from a piece did not come from it: the flattening and the grid, with room. */
const OWN = 0.001;

/**
 * The number of the piece that a side came from, by what is known at its ends: a piece known at both, else one
 * known at either, else any, whichever the side lies on best. -1 without pieces.
 */
export function ownPiece(
  start: Point,
  end: Point,
  atStart: readonly number[],
  atEnd: readonly number[],
  pieces: readonly Piece[],
): number {
  const middle = midpoint(start, end);
  const strayFrom = (number: number): number => {
    const segment = pieces[number]?.segment;
    if (segment === undefined) return Infinity;
    return Math.max(
      distanceToSegment(middle, segment),
      distanceToSegment(start, segment),
      distanceToSegment(end, segment),
    );
  };
  const common = atStart.filter((number) => atEnd.includes(number));
  for (const numbers of [common, [...atStart, ...atEnd]]) {
    const best = leastOf(numbers, strayFrom);
    if (best.value <= OWN) return best.number;
  }
  return leastOf(pieces.keys(), strayFrom).number;
}

function leastOf(
  numbers: Iterable<number>,
  value: (number: number) => number,
): { readonly number: number; readonly value: number } {
  let least = { number: -1, value: Infinity };
  for (const number of numbers) {
    const here = value(number);
    if (here < least.value) least = { number, value: here };
  }
  return least;
}
