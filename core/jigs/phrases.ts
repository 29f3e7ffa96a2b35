import { formatLength } from '../units/format-length.ts';
import type { BuildContext, FrontEdge } from './types.ts';

/** An overhang as the shop reads it: `1 7/16"`. */
export const overhangText = (overhang: number, context: BuildContext): string =>
  formatLength(overhang, context.unit);

/** What tells jigs for bevelled edges from each other and from those for square ones, which say nothing. */
export const bevelWords = (
  { backBevel, frontThickness }: FrontEdge,
  context: BuildContext,
): readonly string[] =>
  backBevel === 0 ? [] : [`BACK BEVEL ${backBevel}°`, `FRONT ${formatLength(frontThickness, context.unit)}`];

/**
 * The arrow to the cabinet's left, which the back view has at its right; in a label that is turned a quarter
 * to the left, that is down.
 */
export const cabinetLeft = (angle: number): string => `${angle === 90 ? '↓' : '→'} CABINET LEFT`;
