import { flatten } from './flatten.ts';
import type { Segment } from './segments.ts';
import type { Point } from './types.ts';
import { distance } from './vector.ts';

/**
 * A piece of exact geometry that sides of a chain came from. An auxiliary piece only holds the chain together
 * and is never part of a result.
 */
export interface Piece {
  readonly segment: Segment;
  readonly auxiliary: boolean;
}

/** A closed polyline that remembers, for each side, the number of the piece that it came from. */
export interface Chain {
  readonly points: readonly Point[];
  /** `sources[i]` belongs to the side from point i to the next. */
  readonly sources: readonly number[];
}

/** The chain of pieces `first` to `first + pieces.length - 1`, each flattened within `flatness` mm. */
export function chainOf(pieces: readonly Piece[], first: number, flatness: number): Chain {
  const points: Point[] = [];
  const sources: number[] = [];
  for (const [index, piece] of pieces.entries()) {
    for (const point of flatten(piece.segment, flatness)) {
      points.push(point);
      sources.push(first + index);
    }
  }
  return { points, sources };
}

/** Signed area in mm² and length in mm of a chain's sides. */
export function chainSize({ points }: Chain): { readonly area: number; readonly length: number } {
  let [area, length] = [0, 0];
  const origin = points[0] ?? { x: 0, y: 0 };
  let before = points.at(-1) ?? origin;
  for (const point of points) {
    area += ((before.x - origin.x) * (point.y - origin.y) - (point.x - origin.x) * (before.y - origin.y)) / 2;
    length += distance(point, before);
    before = point;
  }
  return { area, length };
}
