import { CAUTIONS } from '../cautions/cautions.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { mmText } from '../units/mm-text.ts';
import { roundTo } from '../units/tolerances.ts';
import { allowanceText, couponSizes, type FitSeries } from './coupon-sizes.ts';

/** `coupon.txt`: how the coupon is cut, measured and read, with blanks to fill in. */
export function couponText(machine: MachineProfile): string {
  const { width, height, square, pins, slots, key, teeth } = couponSizes(machine);
  const list = ({ allowances }: FitSeries): string => allowances.map(allowanceText).join(', ');
  const lines = [
    `Coupon for ${machine.name}: ${machine.sheet.material}, ${mmText(machine.sheet.thickness)}`,
    '',
    'Cut it from the sheet, with the settings and the focus that the jigs will have, and the way that it is drawn: comb at',
    'the far side, x across the bed and y along it, as the engraved arrows say. Keep the square that falls out.',
    'Let it cool, then measure with a caliper, each place twice, and take the mean.',
    '',
    `1. The square hole across (drawn ${mmText(square)}):            ________ mm`,
    '2. The square that fell out, across the same way:      ________ mm',
    '   Kerf = (hole minus square) / 2. Say 20.14 and 19.76: (20.14 - 19.76) / 2 = 0.19 mm.',
    ...(pins.allowances.length === 0
      ? []
      : [
          `3. The tightest hole that a pin of ${mmText(machine.pinDiameter)} goes into by hand`,
          `   (${list(pins)}):   ________`,
        ]),
    ...(slots.allowances.length === 0
      ? []
      : [
          `4. The tightest slot that the key of ${mmText(key.width)} goes into by hand`,
          `   (${list(slots)}):   ________`,
        ]),
    `5. The width of the plate, along x (drawn ${mmText(width)}):    ________ mm`,
    `6. Its height at the right, along y (drawn ${mmText(height)}):   ________ mm`,
    '',
    `The comb has teeth of ${teeth.join(', ')} mm: thinner ones that break or burn are too thin for labels and lands.`,
    'What the numbers tell:',
    '  1, 2  how wide the cut is; the files allow for half of it on each side of a line.',
    '  3, 4  how much larger than a pin, or a key, its hole is drawn so that it goes in by hand and does not rattle.',
    `  5, 6  how true the bed moves, for x and y apart. Measured over drawn: ${roundTo(width * 0.999, 2)} of ${roundTo(width, 2)} mm is 0.1 % short.`,
    '        From 0.2 % on adjust the machine’s own steps, for no setting here makes that good.',
    '',
    'Put what you have measured in at "Measured on the coupon" on the page of the machine.',
    '',
    'Cautions',
    ...CAUTIONS.map((caution) => `  - ${caution}`),
    '',
  ];
  return lines.join('\r\n');
}
