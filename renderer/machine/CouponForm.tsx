import { useId, useState } from 'react';
import { allowanceText, couponSizes } from '../../core/calibration/coupon-sizes.ts';
import { readCoupon } from '../../core/calibration/read-coupon.ts';
import type { CouponMeasured } from '../../core/calibration/types.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import { mmText } from '../../core/units/mm-text.ts';
import { sumLength } from '../../core/units/sum-length.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { described, Field } from '../fields/Field.tsx';
import type { DocumentEdit } from '../document/edit.ts';
import { putReading } from './put-reading.ts';

const LENGTHS = [
  ['hole', 'The square hole, across'],
  ['piece', 'The square that fell out, across'],
  ['width', 'Width of the plate'],
  ['height', 'Height of the plate, at its right'],
] as const satisfies readonly (readonly [keyof CouponMeasured, string])[];

type Typed = Readonly<Record<keyof CouponMeasured, string>>;

const NOTHING: Typed = { hole: '', piece: '', pin: '', slot: '', width: '', height: '' };

interface CouponFormProps {
  readonly edit: DocumentEdit;
  /** The profile that the coupon was cut with. */
  readonly machine: MachineProfile;
}

/** Takes what was measured on a coupon, and puts what it tells into the profile. */
export function CouponForm({ edit, machine }: CouponFormProps) {
  const [typed, setTyped] = useState(NOTHING);
  const sizes = couponSizes(machine);
  const complete = LENGTHS.every(([name]) => typed[name].trim() !== '');
  const { value, findings } = complete
    ? readCoupon(measuredOf(typed), machine)
    : { value: null, findings: [] };
  const set = (name: keyof CouponMeasured, text: string): void => setTyped({ ...typed, [name]: text });
  const choices = (offered: readonly number[]) => [
    { value: '', label: 'not tried' },
    ...offered.map((allowance) => ({ value: String(allowance), label: allowanceText(allowance) })),
  ];
  return (
    <section className="document-section" aria-labelledby="machine-coupon">
      <h3 id="machine-coupon">Measured on the coupon</h3>
      <p className="fields-hint">
        Files out writes the coupon of this profile. Cut it, measure it in millimetres, and put the means in
        here.
      </p>
      <div className="document-pair">
        {LENGTHS.map(([name, label]) => (
          <MeasuredField
            key={name}
            label={label}
            drawn={name === 'hole' || name === 'piece' ? sizes.square : sizes[name]}
            text={typed[name]}
            onText={(text) => set(name, text)}
          />
        ))}
        {sizes.pins.allowances.length === 0 ? null : (
          <ChoiceField
            label="Tightest hole that a pin goes into by hand"
            value={typed.pin}
            choices={choices(sizes.pins.allowances)}
            onChange={(text) => set('pin', text)}
          />
        )}
        {sizes.slots.allowances.length === 0 ? null : (
          <ChoiceField
            label="Tightest slot that the key goes into by hand"
            value={typed.slot}
            choices={choices(sizes.slots.allowances)}
            onChange={(text) => set('slot', text)}
          />
        )}
      </div>
      {findings.map(({ severity, message }) => (
        <p key={message} className={severity === 'error' ? 'fields-fault' : 'fields-notice'}>
          {severity === 'error' ? 'Fault' : 'Check'}: {message}
        </p>
      ))}
      {value === null ? null : (
        <p role="status">
          Kerf {mmText(value.kerf)}
          {value.fit.pin === null ? '' : `, hole wider than its pin by ${mmText(value.fit.pin)}`}
          {value.fit.slot === null ? '' : `, slot wider than its key by ${mmText(value.fit.slot)}`}; 1 mm
          comes out {value.scaleX} along x and {value.scaleY} along y.
        </p>
      )}
      <button
        type="button"
        disabled={value === null}
        onClick={() => {
          if (value !== null) edit.replace(putReading(edit.document, value, machine));
        }}
      >
        Put into the profile
      </button>
    </section>
  );
}

interface MeasuredFieldProps {
  readonly label: string;
  /** mm */
  readonly drawn: number;
  readonly text: string;
  readonly onText: (text: string) => void;
}

function MeasuredField({ label, drawn, text, onText }: MeasuredFieldProps) {
  const id = useId();
  const length = sumLength(text, { unit: 'mm' });
  const frame = {
    label,
    hint: `Drawn ${mmText(drawn)}`,
    fault: text.trim() === '' || length.ok ? null : length.reason,
  };
  return (
    <Field {...frame} id={id}>
      <input
        {...described(id, frame)}
        className="fields-input document-figures"
        type="text"
        autoComplete="off"
        value={text}
        onChange={(event) => onText(event.target.value)}
      />
    </Field>
  );
}

/** What was typed as numbers; what is none is for `readCoupon` to refuse. */
function measuredOf(typed: Typed): CouponMeasured {
  const mm = (text: string): number => {
    const length = sumLength(text, { unit: 'mm' });
    return length.ok ? length.mm : Number.NaN;
  };
  const chosen = (text: string): number | null => (text === '' ? null : Number(text));
  return {
    hole: mm(typed.hole),
    piece: mm(typed.piece),
    pin: chosen(typed.pin),
    slot: chosen(typed.slot),
    width: mm(typed.width),
    height: mm(typed.height),
  };
}
