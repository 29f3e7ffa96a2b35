import { SAME_LENGTH } from '../units/tolerances.ts';
import type { CircleContour, Contour, PathContour, Point, RingContour, Vertex } from './types.ts';
import { angleOf, cross, distance, leftOf, midpoint, polar, scale, subtract, unit } from './vector.ts';

export interface LineSegment {
  readonly kind: 'line';
  readonly start: Point;
  readonly end: Point;
}

/** An arc with its circle; `sweep` is signed, counter-clockwise positive, in radians. */
export interface ArcSegment {
  readonly kind: 'arc';
  readonly start: Point;
  readonly end: Point;
  readonly center: Point;
  readonly radius: number;
  readonly startAngle: number;
  readonly sweep: number;
}

export type Segment = LineSegment | ArcSegment;

/**
 * The segment from a vertex to the next point, from the vertex's bulge (DXF: tan(included angle / 4)).
 *
 *     segmentOf({ x: 0, y: 0, bulge: 1 }, { x: 10, y: 0 })  // half circle below, centre (5, 0)
 *
 * A bulge that lifts the arc less than SAME_LENGTH off its chord is a straight line: its centre would be noise.
 */
export function segmentOf(from: Vertex, to: Point): Segment {
  const start = { x: from.x, y: from.y };
  const end = { x: to.x, y: to.y };
  const chord = distance(start, end);
  const bulge = from.bulge;
  if (Math.abs(bulge) * chord < 2 * SAME_LENGTH) return { kind: 'line', start, end };
  const along = scale(subtract(end, start), 1 / chord);
  const middle = midpoint(start, end);
  const toCenter = scale(leftOf(along), (chord * (1 - bulge * bulge)) / (4 * bulge));
  const center = { x: middle.x + toCenter.x, y: middle.y + toCenter.y };
  return {
    kind: 'arc',
    start,
    end,
    center,
    radius: (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge)),
    startAngle: angleOf(subtract(start, center)),
    sweep: 4 * Math.atan(bulge),
  };
}

/** The arc about a centre from an angle through a signed sweep, in radians. */
export const arc = (center: Point, radius: number, startAngle: number, sweep: number): ArcSegment => ({
  kind: 'arc',
  start: polar(center, radius, startAngle),
  end: polar(center, radius, startAngle + sweep),
  center,
  radius,
  startAngle,
  sweep,
});

/** Contours never change, so their segments are worked out once and kept as long as they are. */
const known = new WeakMap<Contour, readonly Segment[]>();

/** All segments of a contour in order; a circle is two counter-clockwise half circles. */
export function segmentsOf(contour: Contour): readonly Segment[] {
  const kept = known.get(contour);
  if (kept !== undefined) return kept;
  const segments = contour.kind === 'circle' ? halves(contour) : sidesOf(contour);
  known.set(contour, segments);
  return segments;
}

const halves = ({ center, radius }: CircleContour): readonly Segment[] => [
  arc(center, radius, 0, Math.PI),
  arc(center, radius, Math.PI, Math.PI),
];

function sidesOf({ vertices, kind }: RingContour | PathContour): readonly Segment[] {
  const segments: Segment[] = [];
  for (const [index, vertex] of vertices.entries()) {
    const next = vertices[index + 1] ?? (kind === 'ring' ? vertices[0] : undefined);
    if (next !== undefined) segments.push(segmentOf(vertex, next));
  }
  return segments;
}

/** The DXF bulge of a segment: tan(sweep / 4), 0 for a line. */
export const bulgeOf = (segment: Segment): number =>
  segment.kind === 'line' ? 0 : Math.tan(segment.sweep / 4);

/** Segments back to vertices; arcs beyond a half circle become two, so that no bulge passes ±1. */
const startVertices = (segment: Segment): readonly Vertex[] => {
  if (segment.kind === 'line' || Math.abs(segment.sweep) <= Math.PI + 1e-12) {
    const bulge = Math.max(-1, Math.min(1, bulgeOf(segment))); // only rounding noise is cut here
    return [{ ...segment.start, bulge }];
  }
  const bulge = Math.tan(segment.sweep / 8);
  return [
    { ...segment.start, bulge },
    { ...pointAt(segment, 0.5), bulge },
  ];
};

/** The ring of segments that follow each other and close. */
export const ringOf = (segments: readonly Segment[]): RingContour => ({
  kind: 'ring',
  vertices: segments.flatMap(startVertices),
});

/** The open path of segments that follow each other. */
export function pathOf(segments: readonly Segment[]): PathContour {
  const last = segments.at(-1);
  const vertices = segments.flatMap(startVertices);
  return { kind: 'path', vertices: last === undefined ? [] : [...vertices, { ...last.end, bulge: 0 }] };
}

/** The point at a share 0 to 1 of a segment's length. */
export function pointAt(segment: Segment, share: number): Point {
  if (segment.kind === 'arc') {
    return polar(segment.center, segment.radius, segment.startAngle + segment.sweep * share);
  }
  const { start, end } = segment;
  return { x: start.x + (end.x - start.x) * share, y: start.y + (end.y - start.y) * share };
}

/** Unit direction of travel at a share 0 to 1 of a segment's length. */
export function directionAt(segment: Segment, share: number): Point {
  if (segment.kind === 'line') return unit(subtract(segment.end, segment.start));
  const angle = segment.startAngle + segment.sweep * share + (Math.sign(segment.sweep) * Math.PI) / 2;
  return { x: Math.cos(angle), y: Math.sin(angle) };
}

/** The same segment walked the other way. */
export const reversed = (segment: Segment): Segment =>
  segment.kind === 'line'
    ? { kind: 'line', start: segment.end, end: segment.start }
    : {
        ...segment,
        start: segment.end,
        end: segment.start,
        startAngle: segment.startAngle + segment.sweep,
        sweep: -segment.sweep,
      };

/** Signed turn in radians from the end of one segment to the start of the next; left is positive. */
export function turnBetween(before: Segment, after: Segment): number {
  const from = directionAt(before, 1);
  const to = directionAt(after, 0);
  return Math.atan2(cross(from, to), from.x * to.x + from.y * to.y);
}
