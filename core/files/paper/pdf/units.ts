import { INCH } from '../../../units/inch-fraction.ts';

/** Points of PDF in a length in mm: 72 in an inch (ISO 32000-1, 8.3.2.3). */
export const points = (mm: number): number => (mm * 72) / INCH;
