import { useState, type ClipboardEvent, type KeyboardEvent, type RefObject } from 'react';
import type { OrderColumn } from '../../core/order/columns.ts';
import { MOST_ROWS } from '../../core/order/lex-csv.ts';
import type { DraftRow } from '../../core/project/draft.ts';
import { pasteCells, selectRow, setCell, settle, settleCell } from '../store/changes.ts';
import { rowsBeyond } from '../store/draft-edits.ts';
import { useProgram } from '../store/use-program.ts';
import { useNotices } from '../app/notices.ts';
import { clipboardTable } from './clipboard-table.ts';
import type { GridColumn } from './columns.ts';

/** The cell that has the keyboard. */
export interface ActiveCell {
  readonly rowId: string;
  /** Place among the columns. */
  readonly at: number;
  readonly editing: boolean;
  /** What was typed to begin an edit; null when the cell's text stays. */
  readonly start: string | null;
}

interface Grid {
  readonly room: RefObject<HTMLDivElement | null>;
  readonly rows: readonly DraftRow[];
  readonly columns: readonly GridColumn[];
  readonly scrollTo: (index: number) => void;
}

/** How the table answers keys and the clipboard: as grids do, with one cell in the order of tabs. */
export function useGridKeys({ rows, columns, scrollTo }: Grid) {
  const [active, setActive] = useState<ActiveCell | null>(null);
  const index = rows.findIndex(({ id }) => id === active?.rowId);

  const go = (row: number, at: number): void => {
    const to = rows[Math.max(0, Math.min(rows.length - 1, row))];
    if (to === undefined) return;
    scrollTo(rows.indexOf(to));
    selectRow(to.id);
    setActive({
      rowId: to.id,
      at: Math.max(0, Math.min(columns.length - 1, at)),
      editing: false,
      start: null,
    });
  };

  const edit = (start: string | null): void => {
    if (active === null || columns[active.at]?.kind !== 'cell') return;
    const column = columns[active.at];
    if (start !== null && column?.kind === 'cell') setCell(active.rowId, column.id, start);
    setActive({ ...active, editing: true, start });
  };

  const onKeyDown = (event: KeyboardEvent): void => {
    if (active === null) return;
    const { at } = active;
    if (active.editing) {
      if (event.key !== 'Enter' && event.key !== 'Tab') return;
      event.preventDefault();
      const column = columns[at];
      if (column?.kind === 'cell') settleCell(active.rowId, column.id);
      if (event.key === 'Enter') go(index + (event.shiftKey ? -1 : 1), at);
      else go(index, at + (event.shiftKey ? -1 : 1));
      return;
    }
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

  const clear = (): void => {
    const column = active === null ? undefined : columns[active.at];
    if (active === null || column?.kind !== 'cell') return;
    setCell(active.rowId, column.id, '');
    settle();
  };

  const onPaste = (event: ClipboardEvent): void => {
    const column = active === null ? undefined : columns[active.at];
    if (active === null || active.editing || column?.kind !== 'cell') return;
    event.preventDefault();
    const table = clipboardTable(event.clipboardData.getData('text/plain'));
    if (rowsBeyond(useProgram.getState().draft, active.rowId, table) > 0) {
      useNotices
        .getState()
        .tell(
          `Not pasted: an order may have ${MOST_ROWS} rows, and this would be more; paste it into several orders.`,
        );
      return;
    }
    const cells = columns.flatMap((one): OrderColumn[] => (one.kind === 'cell' ? [one.id] : []));
    const lost = pasteCells(active.rowId, column.id, table, cells);
    if (lost > 0) {
      useNotices
        .getState()
        .tell(`${lost} pasted cells had no column to go to; show all columns and paste again.`);
    }
  };

  const onCopy = (event: ClipboardEvent): void => {
    const column = active === null ? undefined : columns[active.at];
    const row = rows[index];
    if (active === null || active.editing || column?.kind !== 'cell' || row === undefined) return;
    event.preventDefault();
    event.clipboardData.setData('text/plain', row.cells[column.id] ?? '');
  };

  return { active, setActive, onKeyDown, onPaste, onCopy };
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
