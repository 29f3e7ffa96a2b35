import { SAME_LENGTH, SHORTEST_SEGMENT } from '../units/tolerances.ts';
import { distanceToSegment } from './distance.ts';
import { reliefSide } from './relief-side.ts';
import { directionAt, ringOf, segmentsOf, turnBetween, type Segment } from './segments.ts';
import type { CircleContour, Point, RingContour } from './types.ts';
import { add, angleOf, distance, scale, subtract, unit } from './vector.ts';
import { contourProblems } from './validate.ts';

/** An inside corner where something must seat, with the relief it got or the reason it did not. */
export interface CornerRelief {
  readonly corner: Point;
  /** The circle through the corner that was cut; null if the corner is as sharp as before. */
  readonly relief: CircleContour | null;
  readonly reason?: string;
}

export interface Relieved {
  readonly ring: RingContour;
  readonly reliefs: readonly CornerRelief[];
}

/**
 * Cuts a circle of `radius` mm through each given inside corner, so that a round tool of no more than that radius
 * reaches the corner itself; any angle, between lines and arcs alike.
 *
 *        void                 right angle or wider:      sharper: the sides of the cut run on
 *      ─────╮                 one arc through the        along the bisector, so that the tool
 *       ╭───╯ ← corner        corner from wall to wall   can get in
 *
 * The material lies on the left of the ring's travel: inside a counter-clockwise outline, outside a clockwise
 * hole. The circle stands in the void, its centre on the corner's bisector. Every corner asked for is answered, with
 * its circle or with the reason why there is none. Other rings are not looked at: keep them a radius away.
 */
export function relieveCorners(ring: RingContour, corners: readonly Point[], radius: number): Relieved {
  if (!(radius > 0)) throw new RangeError(`relieveCorners: the radius must be above 0, got ${radius}`);
  const reliefs: CornerRelief[] = [];
  let current = ring;
  for (const corner of corners) {
    const answer = relieveCorner(current, corner, radius);
    if (typeof answer === 'string') {
      reliefs.push({ corner, relief: null, reason: answer });
    } else {
      current = answer.ring;
      reliefs.push({ corner, relief: { kind: 'circle', center: answer.center, radius } });
    }
  }
  return { ring: current, reliefs };
}

/** radians. A smaller turn is no corner: a tool of 10 mm radius comes within 0.00002 mm of it. */
const STRAIGHT = 0.004;

/** The ring with one corner relieved, or why not. */
function relieveCorner(
  ring: RingContour,
  corner: Point,
  radius: number,
): { readonly ring: RingContour; readonly center: Point } | string {
  const segments = segmentsOf(ring);
  const index = segments.findIndex(({ start }) => distance(start, corner) <= SHORTEST_SEGMENT);
  const [before, after] = [segments.at(index - 1), segments[index]];
  if (index === -1 || before === undefined || after === undefined) {
    return 'the outline has no corner there';
  }
  const turn = turnBetween(before, after);
  if (Math.abs(turn) < STRAIGHT) return 'the outline runs on there without a corner';
  if (turn > 0) return 'it is an outside corner: a tool reaches it without relief';

  const point = after.start;
  const bisector = unit(subtract(directionAt(after, 0), directionAt(before, 1)));
  const center = add(point, scale(bisector, radius));
  const [into, out] = [
    reliefSide(before, 'arriving', point, bisector, radius),
    reliefSide(after, 'leaving', point, bisector, radius),
  ];
  if (into === null) return `the side before it is too short for a relief of radius ${radius} mm`;
  if (out === null) return `the side after it is too short for a relief of radius ${radius} mm`;
  const others = segments.filter((segment) => segment !== before && segment !== after);
  if (others.some((segment) => distanceToSegment(center, segment) < radius - SAME_LENGTH)) {
    return `another edge lies within the relief of radius ${radius} mm`;
  }
  const cut: Segment = {
    kind: 'arc',
    start: into.onCircle,
    end: out.onCircle,
    center,
    radius,
    startAngle: angleOf(subtract(into.onCircle, center)),
    sweep: -(into.angle + out.angle),
  };
  const around = [...into.segments, cut, ...out.segments];
  // The segment that closes the ring arrives at its first vertex.
  const relieved = ringOf(
    index === 0
      ? [...around.slice(into.segments.length), ...segments.slice(1, -1), ...into.segments]
      : [...segments.slice(0, index - 1), ...around, ...segments.slice(index + 1)],
  );
  return contourProblems(relieved).length > 0
    ? `a relief of radius ${radius} mm would break through another edge`
    : { ring: relieved, center };
}
