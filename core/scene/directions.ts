import type { Vec3 } from '../jigs/types.ts';
import { radians } from '../units/angle.ts';

/** A picture's own directions in the scene: to the right, up, and towards the viewer. */
export interface Directions {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly viewer: Vec3;
}

/**
 * The directions of a picture seen from degrees about z from +x, and degrees above the bench. z stays upright;
 * straight from above, up the picture is away from the viewer's azimuth.
 */
export function directionsOf(from: { readonly azimuth: number; readonly elevation: number }): Directions {
  const [a, e] = [radians(from.azimuth), radians(from.elevation)];
  const [ca, sa, ce, se] = [Math.cos(a), Math.sin(a), Math.cos(e), Math.sin(e)];
  return {
    right: { x: -sa, y: ca, z: 0 },
    up: { x: -ca * se, y: -sa * se, z: ce },
    viewer: { x: ca * ce, y: sa * ce, z: se },
  };
}
