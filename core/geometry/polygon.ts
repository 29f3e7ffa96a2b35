import { counterClockwise } from './orient.ts';
import type { Point, RingContour } from './types.ts';

/**
 * The ring of straight sides through points, turned counter-clockwise whichever way they are given.
 *
 *     polygon([{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 0, y: 3 }])
 */
export function polygon(points: readonly Point[]): RingContour {
  if (points.length < 3) throw new RangeError(`polygon: needs 3 points or more, got ${points.length}`);
  return counterClockwise<RingContour>({
    kind: 'ring',
    vertices: points.map(({ x, y }) => ({ x, y, bulge: 0 })),
  });
}
