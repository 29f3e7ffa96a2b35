import {
  addRow,
  duplicateRow,
  moveRow,
  redo,
  removeRow,
  setOnlyAttention,
  setPage,
  setStage,
  stepAttention,
  stepRow,
  toggleTheme,
  toggleViewUnit,
  undo,
} from './changes.ts';
import { canRedo, canUndo, findingsByRow, redoLabel, undoLabel } from './readings.ts';
import { ACTIONS, type ActionId, type ActionRecord } from '../../shared/contract/actions.ts';
import type { ProgramState } from './types.ts';
import { useProgram } from './use-program.ts';

/** What an action does; its label, menu and keys are in its record. */
export interface ActionBehaviour {
  readonly id: ActionId;
  readonly enabled: (state: ProgramState) => boolean;
  readonly perform: () => void;
  /** Whether it is switched on, for what is one of two or more ways. */
  readonly checked?: (state: ProgramState) => boolean;
  /** More on what it would do now: what undo takes back. */
  readonly detail?: (state: ProgramState) => string | null;
  /** The shortcut is left to a field while somebody types in it. */
  readonly leaveToFields?: boolean;
}

/** Something that a person can do: menu, shortcuts, buttons and the list of commands all come from these. */
export type ProgramAction = ActionBehaviour & ActionRecord;

const always = (): boolean => true;
const hasRow = ({ selection }: ProgramState): boolean => selection.rowId !== null;
const hasRows = ({ draft }: ProgramState): boolean => draft.rows.length > 0;
const needsAttention = (state: ProgramState): boolean => findingsByRow(state).size > 0;

/** Does something with the selected row. */
const withRow = (act: (rowId: string) => void) => (): void => {
  const { rowId } = useProgram.getState().selection;
  if (rowId !== null) act(rowId);
};

/** What is done inside the program; opening, saving and writing files come from elsewhere. */
const BEHAVIOURS: readonly ActionBehaviour[] = [
  {
    id: 'edit.undo',
    enabled: canUndo,
    perform: undo,
    detail: undoLabel,
  },
  {
    id: 'edit.redo',
    enabled: canRedo,
    perform: redo,
    detail: redoLabel,
  },
  {
    id: 'order.add-row',
    enabled: always,
    perform: () => addRow(useProgram.getState().selection.rowId),
  },
  {
    id: 'order.duplicate-row',
    enabled: hasRow,
    perform: withRow(duplicateRow),
    leaveToFields: true,
  },
  {
    id: 'order.remove-row',
    enabled: hasRow,
    perform: withRow(removeRow),
    leaveToFields: true,
  },
  {
    id: 'order.move-row-up',
    enabled: (state) => hasRow(state) && state.draft.rows[0]?.id !== state.selection.rowId,
    perform: withRow((rowId) => moveRow(rowId, -1)),
    leaveToFields: true,
  },
  {
    id: 'order.move-row-down',
    enabled: (state) => hasRow(state) && state.draft.rows.at(-1)?.id !== state.selection.rowId,
    perform: withRow((rowId) => moveRow(rowId, 1)),
    leaveToFields: true,
  },
  {
    id: 'order.next-row',
    enabled: hasRows,
    perform: () => stepRow(1),
    leaveToFields: true,
  },
  {
    id: 'order.previous-row',
    enabled: hasRows,
    perform: () => stepRow(-1),
    leaveToFields: true,
  },
  {
    id: 'order.next-attention',
    enabled: needsAttention,
    perform: () => stepAttention(1),
  },
  {
    id: 'order.previous-attention',
    enabled: needsAttention,
    perform: () => stepAttention(-1),
  },
  {
    id: 'order.only-attention',
    enabled: always,
    perform: () => setOnlyAttention(!useProgram.getState().view.onlyAttention),
    checked: ({ view }) => view.onlyAttention,
  },
  ...(['bench', 'standard', 'machine', 'output', 'jigs'] as const).map((page): ActionBehaviour => ({
    id: `go.${page}`,
    enabled: always,
    perform: () => setPage(page),
    checked: ({ view }) => view.page === page,
  })),
  ...(['seat', 'cabinet', 'part', 'screw', 'gaps'] as const).map((stage): ActionBehaviour => ({
    id: `stage.${stage}`,
    enabled: always,
    perform: () => setStage(stage),
    checked: ({ view }) => view.page === 'bench' && view.stage === stage,
  })),
  {
    id: 'view.unit',
    enabled: always,
    perform: toggleViewUnit,
    checked: ({ view }) => view.unit === 'mm',
  },
  {
    id: 'view.theme',
    enabled: always,
    perform: toggleTheme,
    checked: ({ view }) => view.theme === 'dark',
  },
];

export const PROGRAM_ACTIONS: readonly ProgramAction[] = recorded(BEHAVIOURS);

/** Behaviours with their records. */
export function recorded(behaviours: readonly ActionBehaviour[]): readonly ProgramAction[] {
  return behaviours.map((behaviour) => {
    const record: ActionRecord | undefined = ACTIONS.find(({ id }) => id === behaviour.id);
    if (record === undefined) throw new RangeError(`there is no record of the action ${behaviour.id}`);
    return { ...record, ...behaviour };
  });
}

/** One list of several; two actions with one id or one shortcut are a programmer's error. */
export function combineActions(...lists: readonly (readonly ProgramAction[])[]): readonly ProgramAction[] {
  const actions = lists.flat();
  for (const of of ['id', 'shortcut'] as const) {
    const seen = new Set<string>();
    for (const action of actions) {
      const value = action[of];
      if (value === null) continue;
      if (seen.has(value)) throw new RangeError(`combineActions: two actions have the ${of} ${value}`);
      seen.add(value);
    }
  }
  return actions;
}
