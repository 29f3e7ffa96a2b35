import type { Point, Vertex } from '../geometry/types.ts';

/**
 * The points of an arc furthest left, right, up and down that lie between its ends: those of its circle on the
 * side of the chord to which it bulges. For the checkers alone: the writers measure by angles.
 */
export function arcExtremes(from: Vertex, to: Point): readonly Point[] {
  const { bulge } = from;
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  if (bulge === 0 || (dx === 0 && dy === 0)) return [];
  const lift = (1 - bulge * bulge) / (4 * bulge);
  const center = { x: (from.x + to.x) / 2 - dy * lift, y: (from.y + to.y) / 2 + dx * lift };
  const radius = Math.hypot(from.x - center.x, from.y - center.y);
  // A counter-clockwise arc lies to the right of its chord.
  const onArc = ({ x, y }: Point): boolean => (dx * (y - from.y) - dy * (x - from.x)) * bulge < 0;
  return [
    { x: center.x - radius, y: center.y },
    { x: center.x + radius, y: center.y },
    { x: center.x, y: center.y - radius },
    { x: center.x, y: center.y + radius },
  ].filter(onArc);
}
