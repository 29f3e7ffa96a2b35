import type { RowState } from '../../core/elevation/types.ts';

/** The mark and the word that tell a state without its colour. */
export const STATE_WORDS: Readonly<Record<RowState, { readonly mark: string; readonly word: string }>> = {
  right: { mark: '✓', word: 'fits' },
  warning: { mark: '!', word: 'check' },
  error: { mark: '✕', word: 'fault' },
};
