import { useId, type ChangeEvent, type KeyboardEvent } from 'react';
import { described, Field, type FieldFrame } from '../fields/Field.tsx';
import { isUndo } from '../fields/is-undo.ts';
import type { DocumentEdit } from './edit.ts';
import type { Path } from './json.ts';

interface DocumentFieldProps extends FieldFrame {
  readonly edit: DocumentEdit;
  readonly path: Path;
  /** Where its faults may stand besides its own path. */
  readonly faultPath?: Path;
  /** A long text, on several lines. */
  readonly long?: boolean;
  /** Figures are written in figures' letters. */
  readonly figures?: boolean;
  readonly placeholder?: string;
  /** Called in the place of a plain change. */
  readonly onText?: (text: string) => void;
}

/** A text of a document, judged by the document's own parser at every stroke. */
export function DocumentField(props: DocumentFieldProps) {
  const { edit, path, faultPath, figures = false, long = false, placeholder, onText, ...frame } = props;
  const id = useId();
  const fault = edit.fault(path) ?? (faultPath === undefined ? null : edit.fault(faultPath));
  const write = onText ?? ((text: string) => edit.set(path, text));
  const control = {
    ...described(id, { ...frame, fault }),
    className: figures ? 'fields-input document-figures' : 'fields-input',
    spellCheck: !figures,
    value: edit.text(path),
    onChange: (event: ChangeEvent<HTMLInputElement | HTMLTextAreaElement>) => write(event.target.value),
    // A document is edited aside from the order, whose changes are not seen from here: undo is the field's own.
    onKeyDown: (event: KeyboardEvent) => {
      if (isUndo(event)) event.stopPropagation();
    },
  };
  return (
    <Field {...frame} id={id} fault={fault}>
      {long ? (
        <textarea {...control} rows={3} />
      ) : (
        <input {...control} type="text" autoComplete="off" placeholder={placeholder} />
      )}
    </Field>
  );
}
