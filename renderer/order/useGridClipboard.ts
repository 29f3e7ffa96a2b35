import type { ClipboardEvent } from 'react';
import { useNotices } from '../app/notices.ts';
import type { OrderColumn } from '../../core/order/columns.ts';
import { MOST_ROWS } from '../../core/order/lex-csv.ts';
import type { DraftRow } from '../../core/project/draft.ts';
import { pasteCells } from '../store/changes.ts';
import { rowsBeyond } from '../store/draft-edits.ts';
import { isFiltered } from '../store/readings.ts';
import { useProgram } from '../store/use-program.ts';
import { clipboardTable } from './clipboard-table.ts';
import type { GridColumn } from './columns.ts';
import type { ActiveCell } from './useActiveCell.ts';

/** How the table answers the clipboard: cells go in from the active one on; a table without rows takes them as its first. */
export function useGridClipboard(
  active: ActiveCell | null,
  rows: readonly DraftRow[],
  columns: readonly GridColumn[],
) {
  const cells = columns.flatMap((one): OrderColumn[] => (one.kind === 'cell' ? [one.id] : []));
  const column = active === null ? undefined : columns[active.at];

  const onPaste = (event: ClipboardEvent): void => {
    if (active !== null && (active.edit !== null || column?.kind !== 'cell')) return;
    const first = column?.kind === 'cell' ? column.id : cells[0];
    if (first === undefined) return;
    event.preventDefault();
    const rowId = active?.rowId ?? null;
    const table = clipboardTable(event.clipboardData.getData('text/plain'));
    const state = useProgram.getState();
    const { tell } = useNotices.getState();
    // A table that hides rows gets no new ones.
    if (!isFiltered(state) && rowsBeyond(state.draft, rowId, table) > 0) {
      tell(
        `Not pasted: an order may have ${MOST_ROWS} rows, and this would be more; paste it into several orders.`,
      );
      return;
    }
    const lost = pasteCells(rowId, first, table, cells);
    const words = [...lostRows(lost.rows), ...lostCells(lost.cells)];
    if (words.length > 0) tell(words.join(' '));
  };

  const onCopy = (event: ClipboardEvent): void => {
    const row = rows.find(({ id }) => id === active?.rowId);
    if (active?.edit !== null || column?.kind !== 'cell' || row === undefined) return;
    event.preventDefault();
    event.clipboardData.setData('text/plain', row.cells[column.id] ?? '');
  };

  return { onPaste, onCopy };
}

const lostRows = (count: number): readonly string[] =>
  count === 0
    ? []
    : [
        `${count} pasted ${count === 1 ? 'row' : 'rows'} did not fit in the rows that need attention; show all rows and paste again.`,
      ];

const lostCells = (count: number): readonly string[] =>
  count === 0 ? [] : [`${count} pasted cells had no column to go to; show all columns and paste again.`];
