import { distanceToSegment } from './distance.ts';
import { lengthOf } from './measure.ts';
import { cornerArc, offsetSegment } from './offset-raw.ts';
import { pointAt, type Segment } from './segments.ts';
import type { Point } from './types.ts';

/**
 * A point on the right of a closed run of segments that stands at least `deep - slack` mm from all of it. Null is
 * the proof that no point there stands `deep` mm from it.
 *
 * The border of all points that deep runs along the moved segments and corner arcs, so the search walks along
 * these. From a place at depth h nothing within `deep - slack - h` can be deep enough, so it steps that far.
 */
export function pointThatDeep(segments: readonly Segment[], deep: number, slack: number): Point | null {
  const enough = deep - slack;
  const border = segments.flatMap((segment, index) => {
    const before = segments[(index + segments.length - 1) % segments.length];
    const corner = before === undefined ? null : cornerArc(before, segment, deep);
    return [corner, offsetSegment(segment, deep)].filter((piece) => piece !== null);
  });
  for (const piece of border) {
    const length = lengthOf(piece);
    for (let way = 0; way <= length;) {
      const point = pointAt(piece, way / length);
      const depth = depthOf(point, segments, enough / 2);
      if (depth >= enough) return point;
      way += Math.max(slack, enough - depth);
    }
  }
  return null;
}

/** Distance in mm to the nearest segment, or to any that is nearer than `hopeless`: the step is long enough then. */
function depthOf(point: Point, segments: readonly Segment[], hopeless: number): number {
  let least = Infinity;
  for (const segment of segments) {
    least = Math.min(least, distanceToSegment(point, segment));
    if (least < hopeless) break;
  }
  return least;
}
