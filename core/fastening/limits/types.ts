import type { Point } from '../../geometry/types.ts';
import type { LimitName } from '../types.ts';

/** What every limit says of itself. */
interface Named {
  readonly limit: LimitName;
  readonly against: string;
  /** mm that must be there. */
  readonly least: number;
}

/**
 * Distance in mm of one part of the screw or of its driver from a plane that stands upright on the front:
 * `normal` points to where the screw may be, `offset` is where the plane is. All in the corner's frame.
 */
export interface PlaneLimit extends Named {
  readonly normal: Point;
  readonly offset: number;
  readonly part: PlanePart;
  /** Holds of itself where this does: a screw that ends above a groove need not keep beside it. */
  readonly unless: LeanLimit | null;
}

export interface PlanePart {
  /**
   * `disc`: square to the screw, its middle `along` mm along it from the entry, below 0 towards the driver.
   * `slice`: the cut of a cylinder about the screw's axis with the level that lies `along` mm below the entry.
   */
  readonly kind: 'disc' | 'slice';
  readonly along: number;
  readonly radius: number;
}

/**
 * A length in mm that depends on the angle alone:
 * base + secant / cos + cosine x cos + sine x sin + tangent x tan.
 */
export interface LeanLimit extends Named {
  readonly base: number;
  readonly secant: number;
  readonly cosine: number;
  readonly sine: number;
  readonly tangent: number;
}

/** Wood in mm between the screw and an upright hole. */
export interface HoleLimit extends Named {
  readonly center: Point;
  /** Of the hole and of the screw together. */
  readonly radii: number;
  /** Of the screw. */
  readonly length: number;
}

/** All limits of one screw in one piece of wood: plain data, so that equal places are one key. */
export interface PlaceLimits {
  readonly planes: readonly PlaneLimit[];
  readonly leans: readonly LeanLimit[];
  readonly holes: readonly HoleLimit[];
  /** Degrees. */
  readonly largestAngle: number;
}
