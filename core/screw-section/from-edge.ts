import type { ScrewPlace } from '../fastening/types.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Point } from '../geometry/types.ts';
import type { Vec3 } from '../jigs/types.ts';
import type { Edge } from '../order/types.ts';
import type { ScrewSection, SectionPoint } from './types.ts';

/** The edge of the front that a section goes across, at a screw's own corner. */
export const edgeAcross = ({ corner }: ScrewPlace, across: ScrewSection['across']): Edge =>
  across === 'side' ? corner.hand : corner.end;

/** How far a point of the back view is from an edge of the front's face, inwards; mm. */
export function fromEdge({ x, y }: Point, edge: Edge, fit: DrawerFit): number {
  switch (edge) {
    // In the back view the cabinet's right is at x = 0.
    case 'right':
      return x;
    case 'left':
      return fit.frontW - x;
    case 'bottom':
      return y;
    default:
      return fit.frontH - y;
  }
}

/** A point in space as a section across an edge shows it. */
export const seenAcross = (point: Vec3, edge: Edge, fit: DrawerFit): SectionPoint => ({
  in: fromEdge(point, edge, fit),
  up: point.z,
});
