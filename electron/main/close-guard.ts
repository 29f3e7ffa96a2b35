import type { DocumentState } from '../messages/ports.ts';

export type CloseChoice = 'save' | 'discard' | 'stay';

export interface CloseSteps {
  readonly ask: (name: string) => Promise<CloseChoice>;
  /** Tells the page to save; whether it did shows in what it reports next. */
  readonly save: () => void;
  /** Closes the window, or ends the program if that was asked for. */
  readonly close: () => void;
}

/** Stands between unsaved work and the closing of the window. */
export interface CloseGuard {
  /** Whether the window may close now; if not, the user is asked. */
  readonly mayClose: () => boolean;
  readonly changed: (state: DocumentState) => void;
  /** A save was cancelled or failed: the window stays. */
  readonly notSaved: () => void;
}

export function closeGuard({ ask, save, close }: CloseSteps): CloseGuard {
  let state: DocumentState = { unsaved: false, name: '' };
  let asking = false;
  let closesWhenSaved = false;
  let discarded = false;
  const askUser = async (): Promise<void> => {
    asking = true;
    try {
      const choice = await ask(state.name);
      if (choice === 'stay') return;
      closesWhenSaved = choice === 'save';
      discarded = choice === 'discard';
      // It may have been saved while the question stood.
      if (choice === 'save' && state.unsaved) save();
      else close();
    } finally {
      asking = false;
    }
  };
  return {
    mayClose() {
      if (!state.unsaved || discarded) return true;
      if (!asking) void askUser();
      return false;
    },
    changed(next) {
      state = next;
      // Closing was called off after all, and what has been done since was never given up.
      discarded = false;
      if (next.unsaved || !closesWhenSaved) return;
      closesWhenSaved = false;
      close();
    },
    notSaved() {
      closesWhenSaved = false;
    },
  };
}
