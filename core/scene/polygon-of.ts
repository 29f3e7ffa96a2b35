import { sweeps } from '../geometry/distance.ts';
import { flatten } from '../geometry/flatten.ts';
import { arc, segmentsOf, type Segment } from '../geometry/segments.ts';
import type { ClosedContour, Point } from '../geometry/types.ts';
import { angleOf, distance, subtract, turnOf } from '../geometry/vector.ts';
import { sameLength } from '../units/tolerances.ts';

/** mm. How far a drawn chord may leave its arc: less than the play of a pin in its hole. */
const FLATNESS = 0.02;

/**
 * A contour as the corners of straight sides; straight sides stay where they are to the last digit. Arcs keep
 * the points `through` that they pass: what seats in a relieved corner touches the relief at one point.
 */
export const polygonOf = (contour: ClosedContour, through: readonly Point[] = []): readonly Point[] =>
  segmentsOf(contour)
    .flatMap((segment) =>
      through.reduce<readonly Segment[]>(
        (parts, point) => parts.flatMap((part) => cutAt(part, point)),
        [segment],
      ),
    )
    .flatMap((segment) => flatten(segment, FLATNESS));

/** An arc as two where it passes a point; anything else as it is. */
function cutAt(segment: Segment, point: Point): readonly Segment[] {
  if (segment.kind === 'line' || !sameLength(distance(point, segment.center), segment.radius))
    return [segment];
  if (sameLength(distance(point, segment.start), 0) || sameLength(distance(point, segment.end), 0))
    return [segment];
  const { center, radius, startAngle, sweep, start, end } = segment;
  const angle = angleOf(subtract(point, center));
  if (!sweeps(segment, angle)) return [segment];
  const way = Math.sign(sweep);
  const first = way * turnOf(way * (angle - startAngle));
  return [
    { ...arc(center, radius, startAngle, first), start, end: point },
    { ...arc(center, radius, startAngle + first, sweep - first), start: point, end },
  ];
}
