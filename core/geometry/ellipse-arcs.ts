import { distanceToSegment } from './distance.ts';
import { segmentOf } from './segments.ts';
import type { Point, RingContour, Vertex } from './types.ts';
import { cross, dot, scale, subtract, unit } from './vector.ts';

/** Semi-axes in mm; `along` is the direction of the long one, of length 1. */
export interface Ellipse {
  readonly center: Point;
  readonly long: number;
  readonly short: number;
  readonly along: Point;
}

/** Arcs that follow an ellipse, and how far they leave it at most, mm. */
export interface EllipseArcs {
  /** Each arc's start and bulge; the end of the last arc is left to whatever follows. */
  readonly vertices: readonly Vertex[];
  readonly error: number;
}

/** Arcs of a quarter: more would be shorter than any machine follows. */
const MOST_SPANS = 64;

/** Points of the ellipse at which each span is compared with its arcs. */
const PROBES = 24;

/**
 * The point of an ellipse at an eccentric angle in radians: 0 is the end of the long axis, a quarter turn the
 * end of the short one, counter-clockwise.
 */
export function ellipsePoint({ center, long, short, along }: Ellipse, angle: number): Point {
  const [a, b] = [long * Math.cos(angle), short * Math.sin(angle)];
  return { x: center.x + a * along.x - b * along.y, y: center.y + a * along.y + b * along.x };
}

/**
 * A stretch of an ellipse, counter-clockwise from one eccentric angle to another (radians), as circular arcs
 * that meet without a kink and stay within `tolerance` mm: files have no ellipses (requirement GEOM).
 *
 * Each span is a biarc: two arcs, tangent to the ellipse at the span's ends and to each other between. Spans are
 * halved in number of quarters until all of them are near enough.
 */
export function ellipseSpan(ellipse: Ellipse, from: number, to: number, tolerance: number): EllipseArcs {
  const { long, short } = ellipse;
  if (!(short > 0 && long >= short && tolerance > 0 && to > from)) {
    throw new RangeError(`ellipseSpan: no ellipse of ${long} by ${short} from ${from} to ${to}`);
  }
  const quarters = Math.ceil((to - from) / (Math.PI / 2) - 1e-9);
  for (let count = 1; count <= MOST_SPANS; count += 1) {
    const spans = quarters * count;
    const angleAt = (index: number) => from + ((to - from) * index) / spans;
    const biarcs = Array.from({ length: spans }, (_, index) =>
      biarc(ellipse, angleAt(index), angleAt(index + 1)),
    );
    const error = Math.max(...biarcs.map((one) => one.error));
    if (error <= tolerance) return { vertices: biarcs.flatMap(({ vertices }) => vertices), error };
  }
  throw new RangeError(`ellipseSpan: ${long} by ${short} mm cannot be followed within ${tolerance} mm`);
}

/** A whole ellipse as a ring of tangent arcs within `tolerance` mm, counter-clockwise. */
export function ellipseArcs(
  ellipse: Ellipse,
  tolerance: number,
): { readonly ring: RingContour; readonly error: number } {
  const { vertices, error } = ellipseSpan(ellipse, 0, 2 * Math.PI, tolerance);
  return { ring: { kind: 'ring', vertices }, error };
}

/** Direction of travel at an eccentric angle, length 1. */
function directionOf({ long, short, along }: Ellipse, angle: number): Point {
  const [a, b] = [-long * Math.sin(angle), short * Math.cos(angle)];
  return unit({ x: a * along.x - b * along.y, y: a * along.y + b * along.x });
}

/**
 * The two arcs of a span. With tangents of equal length d to the joint, |v - d (t0 + t1)| = 2 d, where v is the
 * chord and t0, t1 the directions at its ends: a quadratic in d.
 */
function biarc(ellipse: Ellipse, from: number, to: number): EllipseArcs {
  const [start, end] = [ellipsePoint(ellipse, from), ellipsePoint(ellipse, to)];
  const [t0, t1] = [directionOf(ellipse, from), directionOf(ellipse, to)];
  const chord = subtract(end, start);
  const turn = 1 - dot(t0, t1);
  const forward = dot(chord, { x: t0.x + t1.x, y: t0.y + t1.y });
  const d = (Math.sqrt(forward ** 2 + 2 * turn * dot(chord, chord)) - forward) / (2 * turn);
  const joint = {
    x: (start.x + end.x + d * (t0.x - t1.x)) / 2,
    y: (start.y + end.y + d * (t0.y - t1.y)) / 2,
  };
  const first: Vertex = { ...start, bulge: bulgeFrom(t0, subtract(joint, start)) };
  const second: Vertex = { ...joint, bulge: bulgeFrom(scale(t1, -1), subtract(joint, end), -1) };
  const arcs = [segmentOf(first, joint), segmentOf(second, end)];
  const error = Math.max(
    ...Array.from({ length: PROBES }, (_, index) => {
      const probe = ellipsePoint(ellipse, from + ((to - from) * (index + 0.5)) / PROBES);
      return Math.min(...arcs.map((arc) => distanceToSegment(probe, arc)));
    }),
  );
  return { vertices: [first, second], error };
}

/** The bulge of an arc from its direction at one end: its chord turns off by half of the sweep. */
const bulgeFrom = (tangent: Point, chord: Point, way: 1 | -1 = 1): number =>
  way * Math.tan(Math.atan2(cross(tangent, chord), dot(tangent, chord)) / 2);
