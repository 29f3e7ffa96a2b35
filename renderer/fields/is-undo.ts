import type { KeyboardEvent } from 'react';

/** Whether keys take back typing, or do it again: a field with letters of its own keeps them from the program. */
export const isUndo = ({
  key,
  ctrlKey,
  metaKey,
}: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey'>): boolean =>
  key.toLowerCase() === 'z' && (ctrlKey || metaKey);
