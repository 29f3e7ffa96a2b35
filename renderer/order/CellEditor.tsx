import { useEffect, useRef, type KeyboardEvent } from 'react';
import { isUndo } from '../fields/is-undo.ts';
import { settle } from '../store/changes.ts';
import type { CellEdit } from './useActiveCell.ts';

interface CellEditorProps {
  readonly label: string;
  readonly text: string;
  readonly edit: CellEdit;
  readonly onChange: (text: string) => void;
  readonly onLeave: () => void;
  readonly onEnd: () => void;
}

/** The input in place of a cell's text; what is typed is stored letter by letter, and Escape puts back what was there. */
export function CellEditor({ label, text, edit, onChange, onLeave, onEnd }: CellEditorProps) {
  const { start, before } = edit;
  const input = useRef<HTMLInputElement>(null);
  const isTakenBack = useRef(false);
  const leave = useRef(onLeave);
  useEffect(() => {
    const field = input.current;
    if (field === null) return undefined;
    field.focus();
    if (start === null) field.select();
    // The field begins with what was typed; later strokes are its own.
    else field.setSelectionRange(start.length, start.length);
    return () => {
      // Another row was picked: the browser tells nobody that the field was left.
      if (!field.isConnected && !isTakenBack.current) leave.current();
    };
  }, [start]);
  useEffect(() => {
    const field = input.current;
    // Changed by something else, such as undo from a menu: the field never shows what is not in the order.
    if (field !== null && field.value.trim() !== text) field.value = text;
  }, [text]);

  const onKeyDown = (event: KeyboardEvent): void => {
    // What is open around the field stays open, and undo takes back letters first, not changes.
    if (event.key === 'Escape' || isUndo(event)) event.stopPropagation();
    if (event.key !== 'Escape') return;
    isTakenBack.current = true;
    onChange(before);
    settle();
    onEnd();
  };
  return (
    <input
      ref={input}
      className="order-editor"
      aria-label={label}
      autoComplete="off"
      spellCheck={false}
      defaultValue={start ?? text}
      onChange={(event) => onChange(event.target.value)}
      onBlur={() => {
        onLeave();
        // In another window nothing ends: the keyboard comes back to the field.
        if (document.hasFocus()) onEnd();
      }}
      onKeyDown={onKeyDown}
    />
  );
}
