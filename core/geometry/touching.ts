import type { Finding } from '../findings/finding.ts';
import { warning } from '../findings/make.ts';
import { boxPairs } from './box-pairs.ts';
import { meetSegments } from './intersect.ts';
import { boundsOfSegment } from './measure.ts';
import { segmentsOf } from './segments.ts';
import type { ClosedContour } from './types.ts';
import { contourProblems } from './validate.ts';

/** A warning for each outline that touches itself or another: the part hangs together by nothing there. */
export function touchFindings(contours: readonly ClosedContour[]): readonly Finding[] {
  const selves = contours.flatMap((contour) => contourProblems(contour).slice(0, 1).map(touchesItself));
  const sides = contours.flatMap((contour, owner) =>
    segmentsOf(contour).map((segment) => ({ segment, owner, box: boundsOfSegment(segment) })),
  );
  const told = new Set<string>();
  const others = boxPairs(sides.map(({ box }) => box)).flatMap(([i, j]) => {
    const [a, b] = [sides[i], sides[j]];
    if (a === undefined || b === undefined || a.owner === b.owner) return [];
    const [point] = meetSegments(a.segment, b.segment);
    const pair = `${a.owner} ${b.owner}`;
    if (point === undefined || told.has(pair)) return [];
    told.add(pair);
    return [touch(point.x, point.y)];
  });
  return [...selves, ...others];
}

const touchesItself = (problem: string): Finding =>
  warning('geometry/touches', `An outline touches itself: ${problem}.`);

const touch = (x: number, y: number): Finding =>
  warning(
    'geometry/touches',
    `Two outlines touch at (${x}, ${y}): nothing holds the part together there.`,
    {},
    { x, y },
  );
