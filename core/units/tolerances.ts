/**
 * All tolerances of the program, each with unit, meaning and reason. Comparisons go through the
 * helpers below; output is rounded in one place (`roundCoordinate`).
 */

/** mm. Two lengths nearer than this are the same length: well under any saw, well over float noise. */
export const SAME_LENGTH = 1e-6;

/** mm. Overhangs nearer than this share a jig: a tenth of the 0.01 mm that files are held to. */
export const SAME_OVERHANG = 1e-3;

/** mm. No exported segment is shorter (requirement DXF-2). */
export const SHORTEST_SEGMENT = 1e-3;

/** mm. How far an exported contour may stray from exact geometry (requirements OFF-1, BOOL). */
export const CONTOUR_ERROR = 1e-3;

/** Decimals of an exported coordinate in mm, and of a bulge (requirement DXF-2). */
export const COORDINATE_DECIMALS = 6;
export const BULGE_DECIMALS = 9;

/** Whether two lengths in mm are the same length. */
export const sameLength = (a: number, b: number, within = SAME_LENGTH): boolean => Math.abs(a - b) <= within;

/** Rounds a number for output and never returns -0. */
export function roundTo(value: number, decimals: number): number {
  const scale = 10 ** decimals;
  const rounded = Math.round(value * scale) / scale;
  return rounded === 0 ? 0 : rounded;
}
