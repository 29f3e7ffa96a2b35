import { useId } from 'react';
import { described, Field, type FieldFrame } from './Field.tsx';
import { useTyping } from './useTyping.ts';

interface TextFieldProps extends FieldFrame {
  readonly value: string;
  /** Called when another text has been written. */
  readonly onCommit: (text: string) => void;
  /** Why a text is refused, without a full stop; null when it is accepted. */
  readonly refuse?: (text: string) => string | null;
  readonly disabled?: boolean;
}

/** A text that is committed by Enter or leaving, as a length is; a refused one stays with its reason. */
export function TextField({ value, onCommit, refuse, disabled = false, ...frame }: TextFieldProps) {
  const id = useId();
  const { fault, input } = useTyping(value, (text) => {
    const reason = refuse?.(text) ?? null;
    if (reason === null) onCommit(text);
    return reason;
  });
  return (
    <Field {...frame} id={id} fault={fault}>
      <input
        {...described(id, { ...frame, fault })}
        {...input}
        className="fields-input"
        type="text"
        autoComplete="off"
        disabled={disabled}
      />
    </Field>
  );
}
