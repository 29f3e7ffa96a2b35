import type { LengthUnit } from '../../core/order/types.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { sumLength } from '../../core/units/sum-length.ts';
import { TextField } from '../fields/TextField.tsx';

interface GapFieldProps {
  readonly label: string;
  /** Null while nothing was read. */
  readonly mm: number | null;
  readonly unit: LengthUnit;
  readonly onChange: (mm: number | null) => void;
}

/** A gap from 0, as a length or a sum of lengths; empty when it was not read. */
export const GapField = ({ label, mm, unit, onChange }: GapFieldProps) => (
  <TextField
    label={label}
    value={mm === null ? '' : formatLength(mm, unit)}
    refuse={(text) => {
      const read = readGap(text, unit);
      return read === null || read.ok ? null : read.reason;
    }}
    onCommit={(text) => {
      const read = readGap(text, unit);
      if (read === null) onChange(null);
      else if (read.ok) onChange(read.mm);
    }}
  />
);

/** Null for an empty text. */
const readGap = (text: string, unit: LengthUnit) =>
  text.trim() === '' ? null : sumLength(text, { unit, zero: true });
