import type { Finding } from '../findings/finding.ts';
import { formatLength } from '../units/format-length.ts';
import { INCH } from '../units/inch-fraction.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import { fitError, fitWarning } from './fit-finding.ts';
import type { DrawerFit } from './types.ts';

/** mm. 48 in: wider drawers are not hung on one pair of slides; common practice, no source. */
const LARGEST_OPENING = 1219.2;

/** Whether the box enters its opening and leaves the slide the room that it needs. */
export function checkBox(fit: DrawerFit): readonly Finding[] {
  const { drawer, rules, boxW, boxH } = fit;
  const mm = (value: number) => formatLength(value, fit.unit);
  const findings: Finding[] = [];
  const report = (
    make: typeof fitError,
    code: string,
    column: string,
    message: string,
    values: Record<string, number>,
  ) => findings.push(make(code, message, { drawer, column, values }));

  if (boxW <= 0 || boxH <= 0) {
    report(
      fitError,
      'no-box',
      boxW <= 0 ? 'opening_w' : 'opening_h',
      `no box fits: an opening of ${mm(drawer.openingW)} x ${mm(drawer.openingH)} less running clearance, lift and top clearance leaves ${mm(boxW)} x ${mm(boxH)}`,
      { boxW, boxH },
    );
    return findings;
  }
  if (boxW - 2 * fit.boxSide < SAME_LENGTH) {
    report(
      fitError,
      'box-no-inside',
      'opening_w',
      `the box is ${mm(boxW)} wide, and its two sides of ${mm(fit.boxSide)} leave no room between them`,
      { boxW, boxSide: fit.boxSide },
    );
  }
  for (const [value, column, word] of [
    [drawer.openingW, 'opening_w', 'wide'],
    [drawer.openingH, 'opening_h', 'high'],
  ] as const) {
    if (value <= LARGEST_OPENING) continue;
    // A bare number is in the order's unit, which is easily forgotten.
    const instead =
      fit.unit === 'in' ? `; if it was measured in millimetres, write ${Math.round(value / INCH)} mm` : '';
    report(
      fitWarning,
      'opening-large',
      column,
      `the opening is ${mm(value)} ${word}, more than drawers are made for${instead}`,
      { opening: value },
    );
  }
  if (boxW >= drawer.openingW - SAME_LENGTH) {
    report(
      fitError,
      'box-too-wide',
      'box_w',
      `the box cannot enter its opening: it is ${mm(boxW)} wide, the opening ${mm(drawer.openingW)}; with the slide's clearance it may be ${mm(drawer.openingW - 2 * rules.runningClearance.value)}`,
      { boxW, openingW: drawer.openingW },
    );
  } else if (
    Math.abs(fit.runningClearance - rules.runningClearance.value) >
    rules.widthTolerance.value / 2 + SAME_LENGTH
  ) {
    report(
      fitWarning,
      'box-width',
      'box_w',
      `the box is ${mm(boxW)} wide and leaves ${mm(fit.runningClearance)} a side; the ${rules.slideName} slide needs ${mm(rules.runningClearance.value)}, a box of ${mm(drawer.openingW - 2 * rules.runningClearance.value)}`,
      { boxW, runningClearance: fit.runningClearance, needed: rules.runningClearance.value },
    );
  }
  const above = drawer.openingH - rules.lift.value - boxH;
  if (above < SAME_LENGTH) {
    report(
      fitError,
      'box-too-high',
      'box_h',
      `the box cannot enter its opening: ${mm(boxH)} high and lifted ${mm(rules.lift.value)}, in an opening of ${mm(drawer.openingH)}; with the top clearance it may be ${mm(drawer.openingH - rules.lift.value - rules.topClearance.value)}`,
      { boxH, openingH: drawer.openingH, lift: rules.lift.value },
    );
  } else if (above < rules.topClearance.value - SAME_LENGTH) {
    report(
      fitWarning,
      'box-height',
      'box_h',
      `the box is ${mm(boxH)} high and leaves ${mm(above)} above it; the shop standard wants ${mm(rules.topClearance.value)}`,
      { boxH, above, needed: rules.topClearance.value },
    );
  }
  return findings;
}
