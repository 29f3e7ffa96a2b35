import { fillet } from '../geometry/fillet.ts';
import type { RingContour } from '../geometry/types.ts';

/** A ring with the corners at these indices rounded; indices count in the ring as given. */
export const roundCorners = (ring: RingContour, corners: readonly number[], radius: number): RingContour =>
  corners.toSorted((a, b) => b - a).reduce((rounded, corner) => fillet(rounded, corner, radius), ring);
