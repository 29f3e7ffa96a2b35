import type { Readings } from './readings.ts';
import { tellsHeight, tellsSide, tellsTurn } from './wanted-move.ts';

/** What the readings do not tell, so that it is left alone. */
export function notesOn(readings: Readings): readonly string[] {
  const { gaps, lapped } = readings;
  const notes = [...lapped].map(
    (edge) => `The front laps a member at its ${edge} edge and shows no gap there; that reading is not used.`,
  );
  if (gaps.length === 0) return notes;
  if (!tellsSide(readings)) notes.push('No gap was read at the sides: the side adjuster is left alone.');
  if (!tellsTurn(readings))
    notes.push('Read both ends of one edge to tell whether the front is turned; it is taken to be level.');
  else if (!tellsHeight(readings))
    notes.push('No gap was read above or below: only the turn is taken out, not the height.');
  return notes;
}
