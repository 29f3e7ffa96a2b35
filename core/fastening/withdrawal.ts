/** What the handbook's equation takes. Lengths in mm. */
interface Threads {
  /** Ovendry weight, volume at 12 % moisture content. */
  readonly specificGravity: number;
  /** Of the shank. */
  readonly diameter: number;
  /** Of the thread in the wood that holds. */
  readonly length: number;
}

/**
 * The pull in N at which a wood screw comes out of the side grain of seasoned wood, on average: p = 108.25 G² D L.
 * An ultimate load without any safety. Wood Handbook, FPL-GTR-282, Eq. 8-10.
 */
export const withdrawalLoad = ({ specificGravity, diameter, length }: Threads): number =>
  108.25 * specificGravity ** 2 * diameter * Math.max(0, length);

/** Length of thread in the front, mm: all that is in it, or the whole thread where that is shorter. */
export const threadInFront = (inFront: number, thread: number): number =>
  Math.max(0, Math.min(inFront, thread));
