import type { ScrewPlace } from '../../../fastening/types.ts';
import type { Point } from '../../../geometry/types.ts';

/** Where a screw goes in at the inside of the box front, and where it comes to the back of the front. */
export interface ScrewPoints {
  readonly head: Point;
  readonly crossing: Point;
}

/** Back view, mm. @param boxFront thickness of the box front, which is from the head to the crossing */
export function screwPoints({ entry, direction }: ScrewPlace, boxFront: number): ScrewPoints {
  if (!(direction.z < 0)) throw new RangeError('screwPoints: the screw does not go into the front');
  const along = boxFront / -direction.z;
  return {
    head: { x: entry.x, y: entry.y },
    crossing: { x: entry.x + direction.x * along, y: entry.y + direction.y * along },
  };
}
