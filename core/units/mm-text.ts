import { roundTo } from './tolerances.ts';

/** A length for a message about a machine or a jig: `3.225 mm`, three decimals at most. */
export const mmText = (mm: number): string => `${roundTo(mm, 3)} mm`;
