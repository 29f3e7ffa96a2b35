import type { DrawerFit } from '../fit/types.ts';
import { BENCH_CLEARANCE } from '../jigs/proportions.ts';
import type { Rect } from './box-place.ts';
import { DRAWN_DEPTH } from './box-solids.ts';
import type { KeepOut } from './types.ts';
import type { Block } from './vec.ts';

/** mm. How far past the jig the bench is drawn. */
const MARGIN = 15;

/** Where no piece of the jig may be: at the bench below its lip, and inside the box, where the driver works. */
export function keepOuts(fit: DrawerFit, box: Rect, jig: Block): readonly KeepOut[] {
  const { frontThickness, boxSide, boxFront } = fit;
  return [
    {
      id: 'bench',
      why: 'The lip stays clear of the bench, or the jig would lift the front',
      min: { x: jig.min.x - MARGIN, y: jig.min.y - MARGIN, z: -frontThickness },
      max: { x: jig.max.x + MARGIN, y: jig.max.y + MARGIN, z: -frontThickness + BENCH_CLEARANCE },
    },
    {
      id: 'driver',
      why: 'Drill and screw driver work inside the box',
      min: { x: box.x + boxSide, y: box.y, z: boxFront },
      max: { x: box.x + box.w - boxSide, y: box.y + box.h, z: DRAWN_DEPTH },
    },
  ];
}
