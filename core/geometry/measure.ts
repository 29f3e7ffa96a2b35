import { segmentsOf, type Segment } from './segments.ts';
import { sweeps } from './distance.ts';
import type { ClosedContour, Contour, Point } from './types.ts';
import { cross, distance, polar } from './vector.ts';

/** Corners of an upright box, mm. */
export interface Bounds {
  readonly min: Point;
  readonly max: Point;
}

const sum = (segments: readonly Segment[], of: (segment: Segment) => number): number =>
  segments.reduce((total, segment) => total + of(segment), 0);

/** The area between an arc and its chord, signed like its sweep. */
const bulgeArea = (segment: Segment): number =>
  segment.kind === 'line' ? 0 : (segment.radius ** 2 / 2) * (segment.sweep - Math.sin(segment.sweep));

/**
 * Enclosed area in mm², exact for arcs: positive for a counter-clockwise ring, negative for a clockwise one.
 *
 *     signedArea(rectangle(100, 40))  // 4000
 *
 * Shoelace formula plus one circular segment for each arc; a circle counts as counter-clockwise.
 */
export function signedArea(contour: ClosedContour): number {
  if (contour.kind === 'circle') return Math.PI * contour.radius ** 2;
  const origin = contour.vertices[0] ?? { x: 0, y: 0 }; // near the ring, so that far rings keep their digits
  return sum(
    segmentsOf(contour),
    (segment) =>
      cross(
        { x: segment.start.x - origin.x, y: segment.start.y - origin.y },
        { x: segment.end.x - origin.x, y: segment.end.y - origin.y },
      ) /
        2 +
      bulgeArea(segment),
  );
}

/** Length in mm of a segment, along the arc. */
export const lengthOf = (segment: Segment): number =>
  segment.kind === 'line' ? distance(segment.start, segment.end) : segment.radius * Math.abs(segment.sweep);

/** Length in mm of all segments of a contour, open or closed. */
export const perimeter = (contour: Contour): number =>
  contour.kind === 'circle' ? 2 * Math.PI * contour.radius : sum(segmentsOf(contour), lengthOf);

/** Where an arc can be outermost. */
const QUARTERS = [0, Math.PI / 2, Math.PI, (3 * Math.PI) / 2] as const;

/** Ends of a segment, and the outermost points that an arc passes on its way. */
const extremes = (segment: Segment): readonly Point[] =>
  segment.kind === 'line'
    ? [segment.start, segment.end]
    : [
        segment.start,
        segment.end,
        ...QUARTERS.filter((angle) => sweeps(segment, angle)).map((angle) =>
          polar(segment.center, segment.radius, angle),
        ),
      ];

/** The upright box of points; of none it is a programmer's error. */
export function boundsOfPoints(points: readonly Point[]): Bounds {
  if (points.length === 0) throw new RangeError('bounds: nothing to measure');
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return { min: { x: minX, y: minY }, max: { x: maxX, y: maxY } };
}

export const boundsOfSegment = (segment: Segment): Bounds => boundsOfPoints(extremes(segment));

/** The upright box of one contour or several, exact for arcs. */
export function bounds(...contours: readonly Contour[]): Bounds {
  return boundsOfPoints(
    contours.flatMap((contour): readonly Point[] =>
      contour.kind !== 'circle' && contour.vertices.every(({ bulge }) => bulge === 0)
        ? contour.vertices
        : segmentsOf(contour).flatMap(extremes),
    ),
  );
}
