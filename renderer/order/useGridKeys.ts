import type { KeyboardEvent } from 'react';
import type { DraftRow } from '../../core/project/draft.ts';
import { setCell, settle, settleCell } from '../store/changes.ts';
import type { GridColumn } from './columns.ts';
import type { ActiveCell } from './useActiveCell.ts';

interface Grid {
  readonly rows: readonly DraftRow[];
  readonly columns: readonly GridColumn[];
  readonly active: ActiveCell | null;
  readonly activate: (cell: ActiveCell) => void;
  readonly scrollTo: (index: number) => void;
}

/** How the table answers keys: as grids do, with one cell in the order of tabs. */
export function useGridKeys({ rows, columns, active, activate, scrollTo }: Grid) {
  const index = rows.findIndex(({ id }) => id === active?.rowId);

  const go = (row: number, at: number): void => {
    const to = rows[Math.max(0, Math.min(rows.length - 1, row))];
    if (to === undefined) return;
    scrollTo(rows.indexOf(to));
    activate({ rowId: to.id, at: Math.max(0, Math.min(columns.length - 1, at)), edit: null });
  };

  const edit = (start: string | null): void => {
    const column = active === null ? undefined : columns[active.at];
    if (active === null || column?.kind !== 'cell') return;
    // Read before the first letter is stored: this is what Escape puts back.
    const before = rows[index]?.cells[column.id] ?? '';
    if (start !== null) setCell(active.rowId, column.id, start);
    activate({ ...active, edit: { start, before } });
  };

  const clear = (): void => {
    const column = active === null ? undefined : columns[active.at];
    if (active === null || column?.kind !== 'cell') return;
    setCell(active.rowId, column.id, '');
    settle();
  };

  const onEditorKey = (event: KeyboardEvent, { rowId, at }: ActiveCell): void => {
    if (event.key !== 'Enter' && event.key !== 'Tab') return;
    const column = columns[at];
    if (column?.kind === 'cell') settleCell(rowId, column.id);
    // A shortcut of the program, which goes on from this row.
    if (event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const step = event.shiftKey ? -1 : 1;
    if (event.key === 'Enter') go(index + step, at);
    else go(index, at + step);
  };

  return (event: KeyboardEvent): void => {
    if (active === null) return;
    if (active.edit !== null) {
      onEditorKey(event, active);
      return;
    }
    const { at } = active;
    const wide = event.ctrlKey || event.metaKey;
    if (wide && (event.key === 'Home' || event.key === 'End')) {
      event.preventDefault();
      go(event.key === 'Home' ? 0 : rows.length - 1, event.key === 'Home' ? 0 : columns.length - 1);
      return;
    }
    if (wide || event.altKey) return;
    const move = MOVES[event.key];
    if (move !== undefined) {
      event.preventDefault();
      const [down, right] = move;
      go(index + down * (Math.abs(down) > 1 ? PAGE : 1), right === 0 ? at : at + right);
      return;
    }
    if (event.key === 'Home') go(index, 0);
    else if (event.key === 'End') go(index, columns.length - 1);
    else if (event.key === 'Enter' || event.key === 'F2') edit(null);
    else if (event.key === 'Delete' || event.key === 'Backspace') clear();
    else if (event.key.length === 1 && event.key !== ' ') edit(event.key);
    else return;
    event.preventDefault();
  };
}

const PAGE = 10;

/** Rows down and columns right; 2 is a page. */
const MOVES: Readonly<Record<string, readonly [number, number]>> = {
  ArrowDown: [1, 0],
  ArrowUp: [-1, 0],
  ArrowRight: [0, 1],
  ArrowLeft: [0, -1],
  PageDown: [2, 0],
  PageUp: [-2, 0],
};
