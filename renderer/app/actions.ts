import { combineActions, PROGRAM_ACTIONS, type ProgramAction } from '../store/program-actions.ts';
import { DOCUMENT_ACTIONS } from './document-actions.ts';

/** Everything that a person can do: menu, keys, buttons and the list of commands come from here. */
export const ACTIONS: readonly ProgramAction[] = combineActions(DOCUMENT_ACTIONS, PROGRAM_ACTIONS);

/** The action of an id; an unknown one is a programmer's error. */
export function actionOf(id: string): ProgramAction {
  const found = ACTIONS.find((action) => action.id === id);
  if (found === undefined) throw new RangeError(`there is no action ${id}`);
  return found;
}
