import { create } from 'zustand';
import { demoDraft } from './demo-draft.ts';
import { preferredTheme } from './preferred-theme.ts';
import { openedState } from './transitions.ts';
import type { ProgramState, ViewSettings } from './types.ts';

const startView = (): ViewSettings => ({
  page: 'bench',
  stage: 'seat',
  theme: preferredTheme(),
  unit: 'in',
  onlyAttention: false,
});

/** The state of the program as a hook: `useProgram((state) => state.selection)`. Changed by `changes.ts` only. */
export const useProgram = create<ProgramState>()((_set, _get, store) => {
  // The page as it is built is drawn of the state as it is; no page takes over what was drawn elsewhere.
  store.getInitialState = store.getState;
  return openedState(demoDraft(), { name: null, handle: null }, startView());
});
