import { pointAt, segmentsOf, type Segment } from '../geometry/segments.ts';
import type { Contour, PathContour, RingContour, Vertex } from '../geometry/types.ts';

/** mm. How far a line may lie from the arc that it stands for (requirement DXF-4). */
const FLATTEN_TOLERANCE = 0.01;

/**
 * A contour with its arcs and circles as lines no more than 0.01 mm off, for importers that ignore bulges.
 * The corners of the lines lie on the arc.
 */
export function arcsAsLines(contour: Contour): RingContour | PathContour {
  const vertices = segmentsOf(contour).flatMap(startPoints);
  if (contour.kind !== 'path') return { kind: 'ring', vertices };
  const last = contour.vertices.at(-1);
  return { kind: 'path', vertices: last === undefined ? vertices : [...vertices, { ...last, bulge: 0 }] };
}

function startPoints(segment: Segment): readonly Vertex[] {
  const count = segment.kind === 'line' ? 1 : chordsOf(segment.radius, segment.sweep);
  return Array.from({ length: count }, (_, i) => {
    const { x, y } = i === 0 ? segment.start : pointAt(segment, i / count);
    return { x, y, bulge: 0 };
  });
}

/** A chord over the angle a lies r (1 - cos(a / 2)) off its arc. At least 3 for a half circle, so that holes stay open. */
function chordsOf(radius: number, sweep: number): number {
  const share = Math.max(0, 1 - FLATTEN_TOLERANCE / radius);
  const largest = Math.min(2 * Math.acos(share), Math.PI / 3);
  return Math.max(1, Math.ceil(Math.abs(sweep) / largest - 1e-9));
}
