import { useId, useState, type KeyboardEvent } from 'react';
import type { Finding } from '../../core/findings/finding.ts';
import { settle } from '../store/changes.ts';
import { described, Field, type FieldFrame } from './Field.tsx';

interface CellFieldProps extends FieldFrame {
  /** The cell's text, empty when the cell is. */
  readonly value: string;
  /** Called with the text at every stroke. */
  readonly onChange: (text: string) => void;
  /** What is found of this cell. */
  readonly findings?: readonly Finding[];
  /** What the cell takes for granted while it is empty. */
  readonly placeholder?: string;
}

/** A cell of the order as it is written, right or not; what is wrong with it stands below. Escape restores. */
export function CellField({ value, onChange, findings = [], placeholder, ...frame }: CellFieldProps) {
  const id = useId();
  // While a cell is being typed in, blanks at its ends stay where they are typed.
  const [typed, setTyped] = useState<string | null>(null);
  const [before, setBefore] = useState(value);
  const message = (severity: Finding['severity']): string | null =>
    findings.find((finding) => finding.severity === severity)?.message ?? null;
  const fault = message('error');

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || typed === null) return;
    event.stopPropagation();
    setTyped(null);
    onChange(before);
  };
  return (
    <Field {...frame} id={id} fault={fault} notice={fault === null ? message('warning') : null}>
      <input
        {...described(id, { ...frame, fault })}
        className="fields-input"
        type="text"
        autoComplete="off"
        spellCheck={false}
        placeholder={placeholder}
        // What came from elsewhere, by undo for one, wins over what was typed.
        value={typed !== null && typed.trim() === value ? typed : value}
        onFocus={() => setBefore(value)}
        onChange={(event) => {
          setTyped(event.target.value);
          onChange(event.target.value);
        }}
        onBlur={() => {
          setTyped(null);
          settle();
        }}
        onKeyDown={onKeyDown}
      />
    </Field>
  );
}
