import { useId } from 'react';
import { described, Field, type FieldFrame } from './Field.tsx';

export interface Choice<T extends string> {
  readonly value: T;
  readonly label: string;
}

interface ChoiceFieldProps<T extends string> extends FieldFrame {
  readonly value: T;
  readonly choices: readonly Choice<T>[];
  readonly onChange: (value: T) => void;
  readonly disabled?: boolean;
}

/** One of a few values. */
export function ChoiceField<T extends string>({
  value,
  choices,
  onChange,
  disabled = false,
  ...frame
}: ChoiceFieldProps<T>) {
  const id = useId();
  return (
    <Field {...frame} id={id} fault={null}>
      <select
        {...described(id, { ...frame, fault: null })}
        className="fields-input"
        disabled={disabled}
        value={value}
        onChange={(event) => {
          const chosen = choices.find((choice) => choice.value === event.target.value);
          if (chosen !== undefined) onChange(chosen.value);
        }}
      >
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
    </Field>
  );
}
