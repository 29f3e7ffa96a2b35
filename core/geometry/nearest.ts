import { SAME_LENGTH } from '../units/tolerances.ts';
import { distanceToSegment } from './distance.ts';
import { boundsOfSegment } from './measure.ts';
import type { Segment } from './segments.ts';
import type { Point } from './types.ts';

/**
 * A function that gives the distance in mm from a point to the nearest of many segments. It measures first to the
 * segment that was nearest the last time, and then only to those whose box is nearer than that: quick for points
 * that follow each other.
 */
export function distanceTo(segments: readonly Segment[]): (point: Point) => number {
  const boxes = new Float64Array(4 * segments.length); // left, bottom, right, top: one block, quick to run through
  for (const [index, segment] of segments.entries()) {
    const { min, max } = boundsOfSegment(segment);
    boxes.set([min.x, min.y, max.x, max.y], 4 * index);
  }
  const edge = (at: number): number => boxes[at] ?? Number.NaN;
  let likely = segments[0];
  return ({ x, y }) => {
    if (likely === undefined) return Infinity;
    let least = distanceToSegment({ x, y }, likely);
    if (least < SAME_LENGTH / 1000) return least; // on it: nothing else can be nearer by an amount that counts
    for (let index = 0, at = 0; index < segments.length; index += 1, at += 4) {
      if (edge(at) - x >= least || x - edge(at + 2) >= least) continue;
      if (edge(at + 1) - y >= least || y - edge(at + 3) >= least) continue;
      const segment = segments[index];
      const away = segment === undefined ? Infinity : distanceToSegment({ x, y }, segment);
      if (away < least) [least, likely] = [away, segment];
    }
    return least;
  };
}
