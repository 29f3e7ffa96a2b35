import { useId } from 'react';
import { formatLength } from '../../core/units/format-length.ts';
import type { LengthOptions } from '../../core/units/parse-length.ts';
import { sumLength } from '../../core/units/sum-length.ts';
import { useProgram } from '../store/use-program.ts';
import { described, Field, type FieldFrame } from './Field.tsx';
import { useTyping } from './useTyping.ts';

interface LengthFieldProps extends FieldFrame, Omit<LengthOptions, 'unit'> {
  /** mm */
  readonly value: number;
  /** Called with mm when another length has been written. */
  readonly onCommit: (mm: number) => void;
  readonly disabled?: boolean;
}

/**
 * A length in the unit that is shown. Takes what people type, and plain sums; a text that is refused stays,
 * with the reason below it. Enter or leaving commits, Escape restores. A value that nobody touches stays
 * exact, although the field shows it rounded.
 */
export function LengthField({ value, onCommit, disabled = false, sign, zero, ...frame }: LengthFieldProps) {
  const id = useId();
  const unit = useProgram((state) => state.view.unit);
  const { fault, input } = useTyping(formatLength(value, unit), (text) => {
    const read = sumLength(text, {
      unit,
      ...(sign === undefined ? {} : { sign }),
      ...(zero === undefined ? {} : { zero }),
    });
    if (!read.ok) return read.reason;
    if (read.mm !== value) onCommit(read.mm);
    return null;
  });
  return (
    <Field {...frame} id={id} fault={fault}>
      <input
        {...described(id, { ...frame, fault })}
        {...input}
        className="fields-input"
        inputMode="text"
        autoComplete="off"
        spellCheck={false}
        disabled={disabled}
        onFocus={(event) => event.target.select()}
      />
    </Field>
  );
}
