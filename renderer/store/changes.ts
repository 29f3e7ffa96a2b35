import type { Registration } from '../../core/jigs/plan-types.ts';
import type { JigSharing } from '../../core/jigs/sharing/types.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import type { OrderColumn } from '../../core/order/columns.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { Draft } from '../../core/project/draft.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import type { Designed } from '../../core/session/types.ts';
import {
  cellsBeyond,
  rowsUnplaced,
  withCell,
  withDate,
  withDuplicate,
  withField,
  withMovedRow,
  withNewRow,
  withoutRow,
  withPasted,
} from './draft-edits.ts';
import { findingsByRow, isFiltered, rowBeside, shownRows } from './readings.ts';
import { sumInCell } from './sum-in-cell.ts';
import { same, withJigPicked, withPartPicked, withRowPicked } from './selection.ts';
import {
  changedState,
  designedState,
  filteredState,
  openedState,
  redoneState,
  savedState,
  settledState,
  undoneState,
  type DraftChange,
} from './transitions.ts';
import type { FileState, PageName, ProgramState, Selection, StageName, ViewSettings } from './types.ts';
import { useProgram } from './use-program.ts';

/** Every change of the program's state; components and actions call these and nothing else. */

type DocumentPlace = Omit<FileState, 'savedDraft'>;

const update = (next: (state: ProgramState) => ProgramState): void => useProgram.setState(next);
const change = (made: DraftChange): void => update((state) => changedState(state, made));

// The order

export const setCell = (rowId: string, column: OrderColumn, text: string): void =>
  change({
    label: `change ${column.replaceAll('_', ' ')}${ofRow(rowId)}`,
    edit: withCell(rowId, column, text),
    rowId,
    mergeKey: `cell ${rowId} ${column}`,
  });

/** Ends the typing in a cell: a sum of lengths becomes the length that it comes to. */
export function settleCell(rowId: string, column: OrderColumn): void {
  const { draft } = useProgram.getState();
  const text = draft.rows.find(({ id }) => id === rowId)?.cells[column];
  const length = text === undefined ? null : sumInCell(column, text, draft.unit);
  if (length !== null) setCell(rowId, column, length);
  settle();
}

/** A row below another one, or at the end (null); it is selected. */
export const addRow = (after: string | null): void =>
  change({ label: 'add a row', edit: withNewRow(after), picksAdded: true });

export const duplicateRow = (rowId: string): void =>
  change({ label: `duplicate${ofRow(rowId, 'row')}`, edit: withDuplicate(rowId), rowId, picksAdded: true });

export const removeRow = (rowId: string): void =>
  change({ label: `remove${ofRow(rowId, 'row')}`, edit: withoutRow(rowId), rowId });

/** Down by so many places, up when below 0. */
export const moveRow = (rowId: string, by: number): void =>
  change({ label: `move${ofRow(rowId, 'row')}`, edit: withMovedRow(rowId, by), rowId });

/** What a paste had no place for. */
interface Unplaced {
  readonly rows: number;
  /** Of the rows that had a place, those without a column. */
  readonly cells: number;
}

/** Puts in the cells of a spreadsheet from a row on, into the rows that are shown, or below the last row (null). */
export function pasteCells(
  rowId: string | null,
  column: OrderColumn,
  table: readonly (readonly string[])[],
  columns?: readonly OrderColumn[],
): Unplaced {
  const state = useProgram.getState();
  const shown = isFiltered(state) ? shownRows(state).map(({ id }) => id) : null;
  const rows = rowsUnplaced(rowId, table, shown);
  const placed = table.slice(0, table.length - rows);
  change({
    label: `paste ${placed.length === 1 ? 'cells' : `${placed.length} rows`}`,
    edit: withPasted(rowId, column, placed, columns, shown),
    ...(rowId === null ? {} : { rowId }),
  });
  return { rows, cells: cellsBeyond(column, placed, columns) };
}

const ofRow = (rowId: string, word = 'of row'): string => {
  const index = useProgram.getState().draft.rows.findIndex(({ id }) => id === rowId);
  return index === -1 ? '' : ` ${word} ${index + 1}`;
};

export const setName = (name: string): void =>
  change({ label: 'change the name', edit: withField('name', name), mergeKey: 'name' });

/** `YYYY-MM-DD`, or nothing for an order without a date. */
export const setDate = (date: string): void =>
  change({ label: 'change the date', edit: withDate(date), mergeKey: 'date' });

/** The unit of bare numbers in the cells; what the cells mean changes with it. */
export const setUnit = (unit: LengthUnit): void =>
  change({ label: 'change the unit of bare numbers', edit: withField('unit', unit) });

export const setRegistration = (registration: Registration): void =>
  change({ label: 'change what the jigs register on', edit: withField('registration', registration) });

/** Whether drawers of different overhangs share jigs, and how many the shop is willing to make. */
export const setSharing = (sharing: JigSharing): void =>
  change({ label: 'change which drawers share jigs', edit: withField('sharing', sharing) });

export const setStandard = (standard: ShopStandard, label = 'change the shop standard'): void =>
  change({ label, edit: withField('standard', standard) });

export const setMachine = (machine: MachineProfile, label = 'change the machine profile'): void =>
  change({ label, edit: withField('machine', machine) });

/** Ends a run of typing: called when a field is left. */
export const settle = (): void => update(settledState);

export const undo = (): void => update(undoneState);
export const redo = (): void => update(redoneState);

// The document

/** Another document takes the place of this one; its history begins. */
export const openDraft = (draft: Draft, place: DocumentPlace): void =>
  update(({ view }) => openedState(draft, place, view));

/** Work that was kept after a crash: open, and unsaved. */
export const recoverDraft = (draft: Draft, place: DocumentPlace): void =>
  update(({ view }) => {
    const state = openedState(draft, place, view);
    return { ...state, file: { ...state.file, savedDraft: { ...draft } } };
  });

export const markSaved = (draft: Draft, place: DocumentPlace): void =>
  update((state) => savedState(state, draft, place));

export const setDesigned = (designed: Designed): void => update((state) => designedState(state, designed));

// What is picked

const pick = (next: (state: ProgramState) => Selection): void =>
  update((state) => {
    const wanted = next(state);
    // A design that lags behind may name a row that has been removed.
    const there = wanted.rowId === null || state.draft.rows.some(({ id }) => id === wanted.rowId);
    const selection = there ? same(state.selection, wanted) : state.selection;
    return selection === state.selection ? state : { ...settledState(state), selection };
  });

export const selectRow = (rowId: string | null): void =>
  pick(({ selection, designed }) => withRowPicked(selection, rowId, designed));

export const selectJig = (jigId: string | null): void =>
  pick(({ selection, designed }) => withJigPicked(selection, jigId, designed));

export const selectPart = (partId: string | null): void =>
  pick(({ selection, designed }) => withPartPicked(selection, partId, designed));

/** The next (or previous) row of those shown. */
export const stepRow = (step: 1 | -1): void =>
  pick((state) => {
    const rowId = rowBeside(shownRows(state), state.draft.rows, state.selection.rowId, step);
    return withRowPicked(state.selection, rowId, state.designed);
  });

/** The next (or previous) row that has a finding. */
export const stepAttention = (step: 1 | -1): void =>
  pick((state) => {
    const attention = findingsByRow(state);
    const rows = state.draft.rows.filter(({ id }) => attention.has(id));
    const rowId = rowBeside(rows, state.draft.rows, state.selection.rowId, step) ?? state.selection.rowId;
    return withRowPicked(state.selection, rowId, state.designed);
  });

// How things are shown

const show = (settings: Partial<ViewSettings>): void =>
  update((state) => ({ ...state, view: { ...state.view, ...settings } }));

export const setPage = (page: PageName): void => show({ page });
/** Shows a stage of the bench, and the bench. */
export const setStage = (stage: StageName): void => show({ page: 'bench', stage });
export const setOnlyAttention = (onlyAttention: boolean): void =>
  update((state) => filteredState(state, onlyAttention));
export const toggleTheme = (): void =>
  show({ theme: useProgram.getState().view.theme === 'light' ? 'dark' : 'light' });
export const toggleViewUnit = (): void =>
  show({ unit: useProgram.getState().view.unit === 'in' ? 'mm' : 'in' });
