import type { Finding } from '../../core/findings/finding.ts';
import type { DraftRow } from '../../core/project/draft.ts';
import type { DraftFinding } from '../../core/session/types.ts';
import type { ProgramState } from './types.ts';

/** What the state says, for components and actions: `useProgram(canUndo)`. */

export const canUndo = ({ history }: ProgramState): boolean => history.past.length > 0;
export const canRedo = ({ history }: ProgramState): boolean => history.future.length > 0;

/** What undo would take back; null when there is nothing. */
export const undoLabel = ({ history }: ProgramState): string | null => history.past.at(-1)?.label ?? null;
export const redoLabel = ({ history }: ProgramState): string | null => history.future.at(-1)?.label ?? null;

export const isUnsaved = ({ draft, file }: ProgramState): boolean => draft !== file.savedDraft;

/** Whether anything is found that stops the output. */
export const hasErrors = ({ designed }: ProgramState): boolean =>
  designed?.findings.some(({ finding }) => finding.severity === 'error') ?? false;

const byRow = new WeakMap<readonly DraftFinding[], ReadonlyMap<string, readonly Finding[]>>();
const NONE: readonly Finding[] = [];

/** The findings of each row that has any; made once for each design. */
export function findingsByRow({
  designed,
}: Pick<ProgramState, 'designed'>): ReadonlyMap<string, readonly Finding[]> {
  if (designed === null) return new Map();
  const known = byRow.get(designed.findings);
  if (known !== undefined) return known;
  const rows = new Map<string, Finding[]>();
  for (const { rowId, finding } of designed.findings) {
    if (rowId === null) continue;
    const own = rows.get(rowId);
    if (own === undefined) rows.set(rowId, [finding]);
    else own.push(finding);
  }
  byRow.set(designed.findings, rows);
  return rows;
}

/** The findings of one row; the same array until the design changes. */
export const findingsOfRow = (
  state: Pick<ProgramState, 'designed'>,
  rowId: string | null,
): readonly Finding[] => (rowId === null ? undefined : findingsByRow(state).get(rowId)) ?? NONE;

/** Whether rows may be hidden: until something is found of them all are shown. */
export const isFiltered = ({ designed, view }: Pick<ProgramState, 'designed' | 'view'>): boolean =>
  view.onlyAttention && designed !== null;

/** The rows that are asked for: all, or those that need attention. */
export function wantedRows(state: Pick<ProgramState, 'draft' | 'designed' | 'view'>): readonly DraftRow[] {
  if (!isFiltered(state)) return state.draft.rows;
  const attention = findingsByRow(state);
  return state.draft.rows.filter(({ id }) => attention.has(id));
}

/**
 * The rows that the order list shows: those asked for, and the one that is picked until another one is. It must not
 * go away beneath the hands of somebody who mends it, and actions on it must be seen.
 */
export function shownRows(
  state: Pick<ProgramState, 'draft' | 'designed' | 'view' | 'selection'>,
): readonly DraftRow[] {
  if (!isFiltered(state)) return state.draft.rows;
  const wanted = new Set(wantedRows(state));
  return state.draft.rows.filter((row) => wanted.has(row) || row.id === state.selection.rowId);
}

/** The next row below (or above) the selected one among these, going round at the ends. */
export function rowBeside(
  rows: readonly DraftRow[],
  all: readonly DraftRow[],
  from: string | null,
  step: 1 | -1,
): string | null {
  const place = new Map(all.map(({ id }, index) => [id, index]));
  const here = (from === null ? undefined : place.get(from)) ?? (step === 1 ? -1 : all.length);
  const beyond = ({ id }: DraftRow): boolean => ((place.get(id) ?? here) - here) * step > 0;
  const [found, start] = step === 1 ? [rows.find(beyond), rows[0]] : [rows.findLast(beyond), rows.at(-1)];
  return (found ?? start)?.id ?? null;
}
