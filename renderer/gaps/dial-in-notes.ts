import { create } from 'zustand';
import type { SeenGaps } from '../../core/fit/dial-in/types.ts';

/** What somebody read at a closed drawer, mm, and where its adjusters stood. */
export interface DialInNotes {
  readonly seen: SeenGaps;
  readonly stood: 'at 0' | 'as started';
}

export const NO_NOTES: DialInNotes = { seen: {}, stood: 'at 0' };

/** Notes by drawer for as long as the program runs; they are no part of the document. */
const useNotes = create<Readonly<Record<string, DialInNotes>>>()(() => ({}));

/** The notes of a drawer, and how to change them. */
export function useDialInNotes(drawer: string): readonly [DialInNotes, (notes: DialInNotes) => void] {
  const notes = useNotes((all) => all[drawer] ?? NO_NOTES);
  return [notes, (changed) => useNotes.setState({ [drawer]: changed })];
}
