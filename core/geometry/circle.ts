import type { CircleContour, Point } from './types.ts';

/** A whole circle from centre and radius in mm: `circle({ x: 10, y: 5 }, 2.5)`. */
export function circle(center: Point, radius: number): CircleContour {
  if (!(radius > 0)) throw new RangeError(`circle: the radius must be above 0, got ${radius}`);
  return { kind: 'circle', center: { x: center.x, y: center.y }, radius };
}
