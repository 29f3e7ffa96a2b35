import type { Segment } from './segments.ts';
import type { Point } from './types.ts';
import { angleOf, subtract, turnOf } from './vector.ts';

/** The part of a segment between two points on it, in its own direction. */
export function partOf(segment: Segment, from: Point, to: Point): Segment {
  if (segment.kind === 'line') return { kind: 'line', start: from, end: to };
  const { center } = segment;
  const way = Math.sign(segment.sweep);
  const startAngle = angleOf(subtract(from, center));
  const sweep = way * turnOf(way * (angleOf(subtract(to, center)) - startAngle));
  return { ...segment, start: from, end: to, startAngle, sweep };
}
