import { INCH } from '../../../units/inch-fraction.ts';

/** Width and height of a sheet of paper held upright, mm. */
export interface SheetSize {
  readonly width: number;
  readonly height: number;
}

const inches = (width: number, height: number): SheetSize => ({ width: width * INCH, height: height * INCH });

/** Sheets of paper by name: A series of ISO 216, and the American sizes of ASME Y14.1 and legal. */
export const SHEET_SIZES = {
  A4: { width: 210, height: 297 },
  A3: { width: 297, height: 420 },
  A2: { width: 420, height: 594 },
  A1: { width: 594, height: 841 },
  A0: { width: 841, height: 1189 },
  letter: inches(8.5, 11),
  legal: inches(8.5, 14),
  tabloid: inches(11, 17),
  /** What A4 and letter have in common: with margins of 10 mm it prints on either. */
  'A4 or letter': { width: 210, height: 11 * INCH },
} as const satisfies Readonly<Record<string, SheetSize>>;

export type SheetName = keyof typeof SHEET_SIZES;

/** Sheets that people choose from. */
export const SHEET_NAMES: readonly SheetName[] = [
  'A4 or letter',
  'A4',
  'letter',
  'legal',
  'A3',
  'tabloid',
  'A2',
  'A1',
  'A0',
];
