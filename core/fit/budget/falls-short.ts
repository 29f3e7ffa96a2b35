/** mm. A slack or margin this far below 0 is float noise. */
const NOISE = 1e-9;

/** Whether a slack or margin in mm is below 0. */
export const fallsShort = (slack: number): boolean => slack < -NOISE;
