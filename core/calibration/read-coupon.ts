import type { Finding, Outcome } from '../findings/finding.ts';
import { error, warning } from '../findings/make.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { mmText } from '../units/mm-text.ts';
import { roundTo, sameLength } from '../units/tolerances.ts';
import { couponSizes } from './coupon-sizes.ts';
import type { CouponMeasured, CouponReading } from './types.ts';

/** Decimals of a millimetre that a caliper and a mean of two readings can give. */
const DECIMALS = 3;

/** Share. A bed that is out by more shows on a front of 600 mm as 1 mm and more; common practice, no source. */
const LARGEST_SCALE_ERROR = 0.002;

/**
 * What a coupon tells. A cut takes half of itself off either side of its line, so hole minus piece, halved, is the
 * cut, wherever the line lay: (20.14 - 19.76) / 2 = 0.19 mm.
 *
 * A joint was cut with the kerf that the profile had; once the profile has the true one, holes come out narrower by
 * the difference and keys wider, so that an allowance which just went in then is that much smaller or larger. Where
 * the machine allows for the cut itself, only its own setting counts, and allowances stay.
 *
 * Findings: `calibration/measured` (error: a size that no coupon of this machine has),
 * `calibration/press-fit` (warning: the allowance comes to less than 0, and 0 is taken),
 * `calibration/scale` (warning: the bed is out by more than 0.2 %).
 */
export function readCoupon(measured: CouponMeasured, machine: MachineProfile): Outcome<CouponReading | null> {
  const sizes = couponSizes(machine);
  const findings = [
    ...checkSize('The square hole', 'hole', measured.hole, sizes.square, machine),
    ...checkSize('The square piece', 'piece', measured.piece, sizes.square, machine),
    ...checkSize('The width of the plate', 'width', measured.width, sizes.width, machine),
    ...checkSize('The height of the plate', 'height', measured.height, sizes.height, machine),
    ...checkAllowance('pin', measured.pin, sizes.pins.allowances),
    ...checkAllowance('slot', measured.slot, sizes.slots.allowances),
  ];
  if (findings.length === 0 && measured.hole <= measured.piece) {
    findings.push(
      wrong(
        'hole',
        `The square hole, ${mmText(measured.hole)}, is no larger than the piece that fell out, ${mmText(measured.piece)}; measure both again, the same way across.`,
      ),
    );
  }
  if (findings.length > 0) return { value: null, findings };

  const kerf = (measured.hole - measured.piece) / 2;
  // What was left too wide on either side of a cut line that was placed for another kerf.
  const wider = machine.compensation === 'file' ? kerf - machine.kerf : 0;
  // A hole as wide as the router's tool is drilled, whatever the kerf.
  const drilled =
    machine.kind === 'router' && sameLength(machine.pinDiameter + (measured.pin ?? 0), machine.kerf);
  const notes: Finding[] = [];
  const allowance = (field: 'pin' | 'slot', chosen: number | null, more: number): number | null => {
    if (chosen === null) return null;
    const fit = roundTo(chosen + more, DECIMALS);
    if (fit < 0) notes.push(pressFit(field, fit));
    return Math.max(0, fit);
  };
  const reading: CouponReading = {
    kerf: roundTo(kerf, DECIMALS),
    fit: {
      pin: allowance('pin', measured.pin, drilled ? 0 : wider),
      // The key's thickness is the sheet's and was not cut: of the two ways the tighter one held.
      slot: allowance('slot', measured.slot, Math.min(wider, 2 * wider)),
    },
    scaleX: roundTo((measured.width + wider) / sizes.width, 5),
    scaleY: roundTo((measured.height + wider) / sizes.height, 5),
  };
  return { value: reading, findings: [...notes, ...checkScale(reading)] };
}

/** mm. A measured size further off than this and the widths of two cuts is another size. */
const FAR_OFF = 2;

function checkSize(
  what: string,
  field: keyof CouponMeasured,
  value: number,
  nominal: number,
  { kerf }: MachineProfile,
): readonly Finding[] {
  const room = FAR_OFF + 2 * kerf;
  if (Math.abs(value - nominal) <= room) return [];
  return [
    wrong(
      field,
      `${what} measures ${Number.isFinite(value) ? mmText(value) : 'nothing'}; it is drawn ${mmText(nominal)}, and a measure from ${mmText(nominal - room)} to ${mmText(nominal + room)} is accepted.`,
    ),
  ];
}

function checkAllowance(
  field: 'pin' | 'slot',
  value: number | null,
  offered: readonly number[],
): readonly Finding[] {
  if (value === null || offered.some((allowance) => Math.abs(allowance - value) < 1e-9)) return [];
  const accepted = offered.length === 0 ? 'this coupon has none' : `it has ${offered.join(', ')} mm`;
  const read = Number.isFinite(value) ? `${value} mm` : 'that was read';
  return [wrong(field, `The ${field} allowance ${read} is not on the coupon; ${accepted}.`)];
}

const checkScale = ({ scaleX, scaleY }: CouponReading): readonly Finding[] =>
  (
    [
      ['x', scaleX],
      ['y', scaleY],
    ] as const
  ).flatMap(([axis, scale]) =>
    Math.abs(scale - 1) <= LARGEST_SCALE_ERROR
      ? []
      : [
          warning(
            'calibration/scale',
            `Along ${axis} the machine makes ${scale} mm of 1 mm; adjust its own steps before you trust a jig, more than ${LARGEST_SCALE_ERROR * 100} % is too much.`,
            { field: axis },
            { axis, scale },
          ),
        ],
  );

const pressFit = (field: 'pin' | 'slot', fit: number): Finding =>
  warning(
    'calibration/press-fit',
    `The ${field} goes in although its ${field === 'pin' ? 'hole' : 'slot'} comes out ${mmText(-fit)} narrower than it; a profile takes 0 or more, so 0 is taken.`,
    { field },
    { field, fit },
  );

const wrong = (field: keyof CouponMeasured, message: string): Finding =>
  error('calibration/measured', message, { field }, { field });
