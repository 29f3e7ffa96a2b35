import type { Draft } from '../../core/project/draft.ts';
import type { Designed } from '../../core/session/types.ts';
import type { DraftEdit } from './draft-edits.ts';
import { NO_HISTORY, remembered, settled, steppedBack, steppedForward } from './history.ts';
import { wantedRows } from './readings.ts';
import { firstRow, reselected, rowAfterChange, same, withRowPicked } from './selection.ts';
import type { FileState, ProgramState, ViewSettings } from './types.ts';

/** A program that has just opened a document. */
export const openedState = (
  draft: Draft,
  file: Omit<FileState, 'savedDraft'>,
  view: ViewSettings,
): ProgramState => ({
  draft,
  designed: null,
  selection: { rowId: firstRow(draft), jigId: null, partId: null },
  view,
  file: { ...file, savedDraft: draft },
  history: NO_HISTORY,
});

export interface DraftChange {
  readonly label: string;
  readonly edit: DraftEdit;
  /** The row that the change is about, absent for the draft as a whole. */
  readonly rowId?: string;
  readonly mergeKey?: string;
  /** The row that is new is picked. */
  readonly picksAdded?: boolean;
}

/** The state after a change of the draft, which can be undone; the same state when nothing changes. */
export function changedState(state: ProgramState, change: DraftChange): ProgramState {
  const edited = change.edit(state.draft);
  if (edited === state.draft) return state;
  const { draft, history } = remembered(
    state.history,
    {
      label: change.label,
      draft: state.draft,
      rowId: change.rowId ?? null,
      mergeKey: change.mergeKey ?? null,
    },
    edited,
  );
  const known = new Set(state.draft.rows.map(({ id }) => id));
  const added = change.picksAdded === true ? draft.rows.find(({ id }) => !known.has(id)) : undefined;
  return {
    ...state,
    draft,
    history,
    selection: pickedAfter(state, draft, added?.id ?? state.selection.rowId),
  };
}

export function undoneState(state: ProgramState): ProgramState {
  const turned = steppedBack(state.history, state.draft);
  return turned === undefined ? state : turnedState(state, turned);
}

export function redoneState(state: ProgramState): ProgramState {
  const turned = steppedForward(state.history, state.draft);
  return turned === undefined ? state : turnedState(state, turned);
}

function turnedState(
  state: ProgramState,
  { history, draft, rowId }: NonNullable<ReturnType<typeof steppedBack>>,
): ProgramState {
  const about = draft.rows.some(({ id }) => id === rowId) ? rowId : state.selection.rowId;
  return { ...state, draft, history, selection: pickedAfter(state, draft, about) };
}

const pickedAfter = (state: ProgramState, draft: Draft, rowId: string | null) =>
  same(
    state.selection,
    withRowPicked(state.selection, rowAfterChange(state.draft, draft, rowId), state.designed),
  );

/** Ends a run of typing, so that the next change is a step of its own. */
export function settledState(state: ProgramState): ProgramState {
  const history = settled(state.history);
  return history === state.history ? state : { ...state, history };
}

/** All rows are shown or only those that need attention; of a row that is hidden by that the first shown takes the place. */
export function filteredState(state: ProgramState, onlyAttention: boolean): ProgramState {
  const shown = { ...state, view: { ...state.view, onlyAttention } };
  const rows = wantedRows(shown);
  if (rows.some(({ id }) => id === state.selection.rowId)) return shown;
  const selection = withRowPicked(state.selection, rows[0]?.id ?? null, state.designed);
  return { ...settledState(shown), selection };
}

/** A design has come in; an older one than that which is there is dropped. */
export function designedState(state: ProgramState, designed: Designed): ProgramState {
  if (state.designed !== null && state.designed.revision > designed.revision) return state;
  return { ...state, designed, selection: reselected(state.selection, designed) };
}

/** The document has been written as `draft`, which may be older than the one in work. */
export const savedState = (
  state: ProgramState,
  draft: Draft,
  file: Omit<FileState, 'savedDraft'>,
): ProgramState => ({
  ...state,
  file: { ...file, savedDraft: draft },
  history: settled(state.history),
});
