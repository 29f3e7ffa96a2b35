import { SAME_LENGTH, SHORTEST_SEGMENT } from '../units/tolerances.ts';
import { boxPairs } from './box-pairs.ts';
import { meetSegments } from './intersect.ts';
import { boundsOfSegment, lengthOf } from './measure.ts';
import { segmentsOf, type Segment } from './segments.ts';
import type { Contour, RingContour } from './types.ts';
import { distance } from './vector.ts';

/**
 * Everything that is wrong with a contour, one sentence each; an empty list means that it may be exported.
 *
 * Checked: numbers are finite; no segment under SHORTEST_SEGMENT; no bulge beyond ±1; enough vertices; a ring
 * neither crosses nor touches itself (exact, arcs included). Paths may cross themselves: letters do.
 */
export function contourProblems(contour: Contour): readonly string[] {
  const broken = notFinite(contour);
  if (broken.length > 0) return broken; // nothing else can be judged
  if (contour.kind === 'circle') return circleProblems(contour.radius);
  const { vertices, kind } = contour;
  const least = 2;
  if (vertices.length < least)
    return [`a ${kind} needs ${least} vertices or more, this has ${vertices.length}`];
  const segments = segmentsOf(contour);
  const own = [
    ...vertices.flatMap(({ bulge }, index) =>
      Math.abs(bulge) > 1 ? [`segment ${index} turns more than half a circle: bulge ${bulge}`] : [],
    ),
    ...segments.flatMap((segment, index) => {
      const length = lengthOf(segment);
      return length < SHORTEST_SEGMENT ? [`segment ${index} is ${length} mm long, too short`] : [];
    }),
  ];
  return kind === 'path' || own.length > 0 ? own : ringProblems(contour, segments);
}

const circleProblems = (radius: number): readonly string[] =>
  2 * Math.PI * radius < SHORTEST_SEGMENT ? [`the circle's radius is ${radius} mm, too small`] : [];

function notFinite(contour: Contour): readonly string[] {
  if (contour.kind === 'circle') {
    const { center, radius } = contour;
    return [center.x, center.y, radius].every(Number.isFinite)
      ? []
      : ['the circle has a number that is not finite'];
  }
  const problems: string[] = [];
  for (const [index, { x, y, bulge }] of contour.vertices.entries()) {
    const isFinite = Number.isFinite(x) && Number.isFinite(y) && Number.isFinite(bulge);
    if (!isFinite) problems.push(`vertex ${index} has a number that is not finite`);
  }
  return problems;
}

function ringProblems(ring: RingContour, segments: readonly Segment[]): readonly string[] {
  return boxPairs(segments.map(boundsOfSegment)).flatMap(([i, j]) => {
    const [a, b] = [segments[i], segments[j]];
    if (a === undefined || b === undefined) return [];
    const joints = [
      ...(j === i + 1 ? [b.start] : []),
      ...((j + 1) % ring.vertices.length === i ? [a.start] : []),
    ];
    return meetSegments(a, b)
      .filter((point) => !joints.some((joint) => distance(joint, point) <= jointRoom(a, b)))
      .map(({ x, y }) => `segments ${i} and ${j} meet at (${x}, ${y})`);
  });
}

/**
 * How far from their common vertex two neighbours may still be found to touch, mm. Tangent neighbours part slowly,
 * by half the square of the way times the difference of their curvatures: they stay within SAME_LENGTH for
 * sqrt(2 SAME_LENGTH / difference), which rounding of coordinates doubles. Never more than 1 mm.
 */
function jointRoom(a: Segment, b: Segment): number {
  const parting = Math.abs(curvature(a) - curvature(b));
  const straight = parting === 0;
  return straight ? SHORTEST_SEGMENT / 10 : Math.min(1, Math.sqrt((8 * SAME_LENGTH) / parting));
}

/** Signed curvature in 1/mm, left turns positive. */
const curvature = (segment: Segment): number =>
  segment.kind === 'line' ? 0 : Math.sign(segment.sweep) / segment.radius;
