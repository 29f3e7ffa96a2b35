import type { ArcSegment } from '../../../geometry/segments.ts';
import type { Point } from '../../../geometry/types.ts';
import { polar } from '../../../geometry/vector.ts';

/** Two control points and the end of a cubic curve that goes on from where the last one ended. */
export type Bezier = readonly [Point, Point, Point];

/** Radians. A curve over 45 degrees strays 4e-6 of the radius: 0.0013 mm at 300 mm; over 90, 2.7e-4. */
const LARGEST = Math.PI / 4;

/** An arc as cubic curves of 45 degrees at most. */
export function arcBeziers({ center, radius, startAngle, sweep }: ArcSegment): readonly Bezier[] {
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / LARGEST - 1e-9));
  const step = sweep / count;
  const reach = (4 / 3) * Math.tan(step / 4) * radius;
  const ahead = (angle: number, by: number): Point => {
    const at = polar(center, radius, angle);
    return { x: at.x - Math.sin(angle) * by, y: at.y + Math.cos(angle) * by };
  };
  return Array.from({ length: count }, (_, index): Bezier => {
    const [from, to] = [startAngle + index * step, startAngle + (index + 1) * step];
    return [ahead(from, reach), ahead(to, -reach), polar(center, radius, to)];
  });
}
