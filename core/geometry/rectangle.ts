import { polygon } from './polygon.ts';
import type { Point, RingContour } from './types.ts';

/**
 * An upright rectangle from its lower left corner, sizes in mm.
 *
 *     rectangle(100, 40)               //  0,40 ─ 100,40
 *     rectangle(100, 40, { x: 5, y: 0 }) //  0,0 ── 100,0
 */
export function rectangle(width: number, height: number, at: Point = { x: 0, y: 0 }): RingContour {
  if (!(width > 0 && height > 0)) {
    throw new RangeError(`rectangle: sizes must be above 0, got ${width} x ${height}`);
  }
  const { x, y } = at;
  return polygon([
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ]);
}
