import { distanceToSegment } from './distance.ts';
import { boundsOfSegment } from './measure.ts';
import type { Segment } from './segments.ts';
import type { Point } from './types.ts';

/**
 * A function that gives the distance in mm from a point to the nearest of many segments; segments whose box is
 * further than the nearest found so far are not measured.
 */
export function distanceTo(segments: readonly Segment[]): (point: Point) => number {
  const boxed = segments.map((segment) => ({ segment, box: boundsOfSegment(segment) }));
  return (point) => {
    let least = Infinity;
    for (const { segment, box } of boxed) {
      const dx = Math.max(box.min.x - point.x, point.x - box.max.x, 0);
      const dy = Math.max(box.min.y - point.y, point.y - box.max.y, 0);
      if (dx < least && dy < least) least = Math.min(least, distanceToSegment(point, segment));
    }
    return least;
  };
}
