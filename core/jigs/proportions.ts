/**
 * Proportions that all jigs share, in mm: what keeps a jig in the hand for years. Each is common practice,
 * no source, unless it says otherwise.
 */

/** Lip and bench never meet, or the jig would ride up and the front with it. */
export const BENCH_CLEARANCE = 1;

/** Room for glue and dust in the corner between lip and plate. */
export const DUST_RELIEF = 1.5;

/** Least height of lip that bears on the front's edge. */
export const SHORTEST_REGISTER = 4;

/** Width of a lip: holds a pin with wood all round it, and survives a drop. */
export const LIP_WIDTH = 18;

/** Along the middle of what the dust layer leaves of a lip, measured from its working face: joints and labels go there. */
export const LIP_MIDDLE = -(LIP_WIDTH + DUST_RELIEF) / 2;

/** How far a lip's ends stand out past the plate, so that one sees it meet the front's edge. */
export const SIGHT = 10;

/** Least overhang that a plate can rest on; below it a jig would tip, and a step profile is used. */
export const SMALLEST_BEARING = 12;

/** No plate reaches farther: beyond it the sheet flexes. */
export const LARGEST_OVERHANG = 250;

/** Radius of corners that meet the hand and the floor. */
export const SOFT_CORNER = 4;

/** Radius of corners at the ends of working edges. */
export const CRISP_CORNER = 1.5;

/** How far the middle of a long working edge stands back, so that it bears at its ends. */
export const RECESS = 1;

/** Hole to hang a jig on its nail. */
export const HANG_HOLE = 7;
