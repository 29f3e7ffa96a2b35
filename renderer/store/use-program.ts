import { create } from 'zustand';
import { demoDraft } from './demo-draft.ts';
import { openedState } from './transitions.ts';
import type { ProgramState, ThemeName, ViewSettings } from './types.ts';

const startView = (): ViewSettings => ({
  page: 'bench',
  stage: 'seat',
  theme: preferredTheme(),
  unit: 'in',
  onlyAttention: false,
});

/** What the system prefers; light where nobody can tell. */
const preferredTheme = (): ThemeName =>
  typeof matchMedia === 'function' && matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light';

/** The state of the program as a hook: `useProgram((state) => state.selection)`. Changed by `changes.ts` only. */
export const useProgram = create<ProgramState>()(() =>
  openedState(demoDraft(), { name: null, handle: null }, startView()),
);
