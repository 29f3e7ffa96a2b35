import { useState, type ChangeEvent, type KeyboardEvent } from 'react';
import { isUndo } from './is-undo.ts';

/** What a text input needs to be typed in, and why its text was refused. */
interface Typing {
  readonly fault: string | null;
  readonly input: {
    readonly value: string;
    readonly onChange: (event: ChangeEvent<HTMLInputElement>) => void;
    readonly onBlur: () => void;
    readonly onKeyDown: (event: KeyboardEvent) => void;
  };
}

/**
 * Typing that is committed by Enter or leaving and taken back by Escape. `accept` takes a text that differs
 * from the one shown and returns null, or refuses it with a reason; a refused text stays to be mended.
 */
export function useTyping(shown: string, accept: (text: string) => string | null): Typing {
  // Null while the field shows its value and nobody types.
  const [typed, setTyped] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);

  const restore = (): void => {
    setTyped(null);
    setFault(null);
  };
  const commit = (): void => {
    const reason = typed === null || typed === shown ? null : accept(typed);
    if (reason === null) restore();
    else setFault(reason);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') commit();
    if (typed === null) return;
    // What is open around the field stays open, and undo takes back letters first, not changes.
    if (event.key === 'Escape' || isUndo(event)) event.stopPropagation();
    if (event.key === 'Escape') restore();
  };
  return {
    fault,
    input: {
      value: typed ?? shown,
      onChange: (event) => setTyped(event.target.value),
      onBlur: commit,
      onKeyDown,
    },
  };
}
