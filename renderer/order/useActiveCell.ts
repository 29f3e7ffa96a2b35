import { useState } from 'react';
import type { DraftRow } from '../../core/project/draft.ts';
import { selectRow, settleCell } from '../store/changes.ts';
import type { GridColumn } from './columns.ts';

/** A change of a cell that is going on. */
export interface CellEdit {
  /** What was typed to begin it, in place of the text; null when the text stays. */
  readonly start: string | null;
  /** The text before it, to be put back. */
  readonly before: string;
}

/** The cell that has the keyboard, or gets it with the next tab. */
export interface ActiveCell {
  readonly rowId: string;
  /** Place among the columns. */
  readonly at: number;
  readonly edit: CellEdit | null;
}

type Place = Omit<ActiveCell, 'rowId'> & { readonly rowId: string | null };

/**
 * The active cell, always in the row that is picked, wherever it was picked: what is typed goes where the eye is.
 * Null when no row is shown.
 */
export function useActiveCell(
  rows: readonly DraftRow[],
  columns: readonly GridColumn[],
  picked: string | null,
): readonly [ActiveCell | null, (cell: ActiveCell) => void] {
  const [last, setLast] = useState<Place>({ rowId: null, at: 0, edit: null });
  const row = rows.find(({ id }) => id === picked) ?? rows[0];
  const rowId = row?.id ?? null;
  const at = Math.min(last.at, columns.length - 1);
  const stands = last.rowId === rowId && last.at === at;
  const place: Place = stands ? last : { rowId, at, edit: null };
  // Kept, so that a change that another pick has ended does not go on when its row is picked again.
  if (!stands) setLast(place);

  const activate = (cell: ActiveCell): void => {
    const left = columns[place.at];
    const isLeft = place.edit !== null && (cell.rowId !== place.rowId || cell.at !== place.at);
    // Before the other row is picked: the sum that is worked out belongs to what was typed.
    if (isLeft && place.rowId !== null && left?.kind === 'cell') settleCell(place.rowId, left.id);
    selectRow(cell.rowId);
    setLast(cell);
  };
  return [hasRow(place) ? place : null, activate];
}

const hasRow = (place: Place): place is ActiveCell => place.rowId !== null;
