import { comparable } from '../../core/order/cabinets.ts';
import { ORDER_COLUMNS, type OrderColumn } from '../../core/order/columns.ts';
import { MOST_ROWS } from '../../core/order/lex-csv.ts';
import type { Draft, DraftRow } from '../../core/project/draft.ts';
import { draftRows } from '../../core/project/draft-rows.ts';

/** A change of a draft: the very same draft when nothing changes. Rows that do not change keep their identity. */
export type DraftEdit = (draft: Draft) => Draft;

/** Cells that a new row takes over from the row above: most rows belong to the same cabinet. */
const CARRIED: readonly OrderColumn[] = ['cabinet', 'qty', 'style', 'room', 'cabinet_kind', 'column'];

export const withCell =
  (rowId: string, column: OrderColumn, text: string): DraftEdit =>
  (draft) =>
    withRow(draft, rowId, (row) => cellSet(row, column, text));

/** A new row below another one, or at the end (null), in the same cabinet as the row above. */
export const withNewRow =
  (after: string | null): DraftEdit =>
  (draft) => {
    const index = after === null ? draft.rows.length - 1 : indexOf(draft, after);
    const above = draft.rows[index];
    const cells = CARRIED.flatMap((column) => {
      const text = above?.cells[column];
      return text === undefined ? [] : [[column, text] as const];
    });
    return inserted(draft, index + 1, Object.fromEntries(cells));
  };

/** A copy below its row, whose drawer gets a name that its cabinet does not have yet. */
export const withDuplicate =
  (rowId: string): DraftEdit =>
  (draft) => {
    const index = indexOf(draft, rowId);
    const row = draft.rows[index];
    if (row === undefined) return draft;
    const { drawer } = row.cells;
    const cells = drawer === undefined ? row.cells : { ...row.cells, drawer: freeName(draft, row, drawer) };
    return inserted(draft, index + 1, cells);
  };

export const withoutRow =
  (rowId: string): DraftEdit =>
  (draft) => {
    const rows = draft.rows.filter(({ id }) => id !== rowId);
    return rows.length === draft.rows.length ? draft : { ...draft, rows };
  };

/** Moves a row down by so many places, up when below 0; no farther than the ends. */
export const withMovedRow =
  (rowId: string, by: number): DraftEdit =>
  (draft) => {
    const from = indexOf(draft, rowId);
    const row = draft.rows[from];
    const to = Math.max(0, Math.min(draft.rows.length - 1, from + by));
    if (row === undefined || to === from) return draft;
    return { ...draft, rows: draft.rows.toSpliced(from, 1).toSpliced(to, 0, row) };
  };

/**
 * Cells of a spreadsheet put in from a cell on, to the right in the order of `columns` and downwards, or below the
 * last row (null). Rows that go beyond the last one become new rows. Where only some rows are `shown`, the cells go
 * into these alone, and no row is added: `rowsUnplaced`. Cells beyond the last column are left out: `cellsBeyond`.
 */
export const withPasted =
  (
    rowId: string | null,
    column: OrderColumn,
    table: readonly (readonly string[])[],
    columns: readonly OrderColumn[] = ORDER_COLUMNS,
    shown: readonly string[] | null = null,
  ): DraftEdit =>
  (draft) => {
    const places = shown ?? draft.rows.map(({ id }) => id);
    const first = rowId === null ? places.length : places.indexOf(rowId);
    const from = columns.indexOf(column);
    if (first === -1 || from === -1 || table.length === 0) return draft;
    const missing = shown === null ? first + table.length - draft.rows.length : 0;
    const blank = Array.from({ length: Math.max(0, missing) }, (): DraftRow['cells'] => ({}));
    const fresh = draftRows(blank, draft.rows);
    const lines = new Map(
      [...places, ...fresh.map(({ id }) => id)].slice(first).map((id, at) => [id, table[at]]),
    );
    const rows = [...draft.rows, ...fresh].map((row) => {
      const pasted = lines.get(row.id) ?? [];
      return pasted.reduce((changed, text, offset) => {
        const at = columns[from + offset];
        return at === undefined ? changed : cellSet(changed, at, text);
      }, row);
    });
    const same = rows.length === draft.rows.length && rows.every((row, index) => row === draft.rows[index]);
    return same ? draft : { ...draft, rows };
  };

/** How many rows a paste from a row on would make beyond those that an order may have; 0 where there is room. */
export const rowsBeyond = (
  draft: Draft,
  rowId: string | null,
  table: readonly (readonly string[])[],
): number => {
  const first = rowId === null ? draft.rows.length : indexOf(draft, rowId);
  return Math.max(0, first + table.length - MOST_ROWS);
};

/** How many rows of a paste go beyond the last one of those shown; 0 where all are (null), for rows are added there. */
export function rowsUnplaced(
  rowId: string | null,
  table: readonly (readonly string[])[],
  shown: readonly string[] | null,
): number {
  if (shown === null) return 0;
  const first = rowId === null ? shown.length : shown.indexOf(rowId);
  return Math.max(0, table.length - (shown.length - first));
}

/** How many cells that hold something a paste has no column for. */
export const cellsBeyond = (
  column: OrderColumn,
  table: readonly (readonly string[])[],
  columns: readonly OrderColumn[] = ORDER_COLUMNS,
): number =>
  table
    .flatMap((row) => row.slice(columns.length - columns.indexOf(column)))
    .filter((text) => text.trim() !== '').length;

/** Sets a field of the draft itself. */
export const withField =
  <K extends Exclude<keyof Draft, 'rows' | 'date'>>(field: K, value: Draft[K]): DraftEdit =>
  (draft) =>
    draft[field] === value ? draft : { ...draft, [field]: value };

/** Sets the date, or takes it away. */
export const withDate =
  (text: string): DraftEdit =>
  (draft) => {
    const { date = '', ...others } = draft;
    if (text === date) return draft;
    return text === '' ? others : { ...others, date: text };
  };

const indexOf = ({ rows }: Draft, rowId: string): number => rows.findIndex(({ id }) => id === rowId);

function withRow(draft: Draft, rowId: string, change: (row: DraftRow) => DraftRow): Draft {
  const index = indexOf(draft, rowId);
  const row = draft.rows[index];
  if (row === undefined) return draft;
  const changed = change(row);
  return changed === row ? draft : { ...draft, rows: draft.rows.with(index, changed) };
}

function cellSet(row: DraftRow, column: OrderColumn, text: string): DraftRow {
  const trimmed = text.trim();
  if ((row.cells[column] ?? '') === trimmed) return row;
  const { [column]: _old, ...others } = row.cells;
  return { ...row, cells: trimmed === '' ? others : { ...others, [column]: trimmed } };
}

function inserted(draft: Draft, index: number, cells: DraftRow['cells']): Draft {
  return { ...draft, rows: draft.rows.toSpliced(index, 0, ...draftRows([cells], draft.rows)) };
}

/** `top` becomes `top 2`, `top 2` becomes `top 3`, until no row of the cabinet has it. */
function freeName(draft: Draft, { cells: { room, cabinet } }: DraftRow, name: string): string {
  const taken = new Set(
    draft.rows
      .filter(({ cells }) => cells.room === room && cells.cabinet === cabinet)
      .map(({ cells }) => comparable(cells.drawer ?? '')),
  );
  const [, stem = name, number = '1'] = /^(.*?)(?: (\d{1,6}))?$/.exec(name) ?? [];
  let next = Number(number) + 1;
  while (taken.has(comparable(`${stem} ${next}`))) next += 1;
  return `${stem} ${next}`;
}
