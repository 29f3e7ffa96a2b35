/**
 * Steps in a millimetre. The packer counts in whole steps, so that what fits exactly does so without rounding;
 * a hundred thousandth of a millimetre keeps 1/32 inch whole, and 20 m within 31 bits.
 */
const STEPS = 1e5;

/** Steps. Float noise of a length in mm; less than this is not rounded up to a step. */
const NOISE = 1e-3;

/** Whole steps that hold a length in mm. */
export const stepsUp = (mm: number): number => Math.ceil(mm * STEPS - NOISE);

/** Whole steps within a length in mm. */
export const stepsDown = (mm: number): number => Math.floor(mm * STEPS + NOISE);

export const mmOf = (steps: number): number => steps / STEPS;
