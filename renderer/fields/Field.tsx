import type { ReactNode } from 'react';
import './fields.css';

/** What every field has around its control. */
export interface FieldFrame {
  readonly label: string;
  /** The label is read out but not seen, where a table's header shows it. */
  readonly hideLabel?: boolean;
  /** One line on what is meant, below the control. */
  readonly hint?: string;
}

interface FieldProps extends FieldFrame {
  readonly id: string;
  /** Why what is written is refused; null when it is not. */
  readonly fault: string | null;
  /** What is accepted but should be looked at. */
  readonly notice?: string | null;
  readonly children: ReactNode;
}

const hintId = (id: string): string => `${id}-hint`;
const faultId = (id: string): string => `${id}-fault`;

/** A control with its label above it, and hint and reason below it. */
export function Field({ id, label, hideLabel = false, hint, fault, notice = null, children }: FieldProps) {
  return (
    <div className="fields-field">
      <label className={hideLabel ? 'fields-hidden-label' : 'fields-label'} htmlFor={id}>
        {label}
      </label>
      {children}
      {hint === undefined ? null : (
        <p className="fields-hint" id={hintId(id)}>
          {hint}
        </p>
      )}
      <div id={faultId(id)} role="status">
        {fault === null ? null : <p className="fields-fault">Fault: {fault}</p>}
        {notice === null ? null : <p className="fields-notice">Check: {notice}</p>}
      </div>
    </div>
  );
}

/** The attributes with which a control names its hint and its fault. */
export const described = (id: string, { hint, fault }: Pick<FieldProps, 'hint' | 'fault'>) => ({
  id,
  'aria-describedby': hint === undefined ? faultId(id) : `${hintId(id)} ${faultId(id)}`,
  'aria-invalid': fault !== null,
});
