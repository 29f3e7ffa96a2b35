import { useState } from 'react';
import { ActionButton } from '../app/ActionButton.tsx';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { UNIT_CHOICES } from '../fields/unit-choices.ts';
import { setRegistration, setUnit } from '../store/changes.ts';
import { useProgram } from '../store/use-program.ts';
import { gridColumns } from './columns.ts';
import { OrderGrid } from './OrderGrid.tsx';
import './order.css';

/** The order: every drawer on a line of its own, to be read and changed in place. */
export function OrderPanel() {
  const [all, setAll] = useState(false);
  const unit = useProgram(({ draft }) => draft.unit);
  const registration = useProgram(({ draft }) => draft.registration);
  return (
    <section className="bench-panel bench-order" aria-labelledby="order-title">
      <header>
        <h2 id="order-title">Order</h2>
        <ActionButton action="order.add-row" label="Add" />
        <ActionButton action="order.duplicate-row" label="Duplicate" />
        <ActionButton action="order.remove-row" label="Remove" />
        <ActionButton action="order.only-attention" label="Needs attention" />
        <button type="button" aria-pressed={all} onClick={() => setAll(!all)}>
          All columns
        </button>
      </header>
      <div className="order-settings">
        <ChoiceField label="Bare numbers are" value={unit} choices={UNIT_CHOICES} onChange={setUnit} />
        <ChoiceField
          label="Jigs register on"
          value={registration}
          choices={REGISTRATIONS}
          onChange={setRegistration}
        />
      </div>
      <OrderGrid columns={gridColumns(all)} />
    </section>
  );
}

const REGISTRATIONS = [
  { value: 'edge', label: 'one edge at a time' },
  { value: 'corner', label: 'a lower corner' },
] as const;
