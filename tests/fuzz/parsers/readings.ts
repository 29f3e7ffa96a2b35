import * as fc from 'fast-check';
import { readCoupon } from '../../../core/calibration/read-coupon.ts';
import { checkPaper } from '../../../core/files/paper/sheet/check-paper.ts';
import { SHEET_SIZES } from '../../../core/files/paper/sheet/sheet-sizes.ts';
import { dialIn } from '../../../core/fit/dial-in/dial-in.ts';
import { MACHINE_NAMES, readMachine } from '../../jigs/setups.ts';
import { fitOf, standard } from '../../fit/budget/fits.ts';
import { fuzzed, type Breaches, type Fuzzed } from '../fuzzed.ts';
import { findingBreaches } from '../rules.ts';

/** Any number at all, and such as a caliper shows. */
const number = fc.oneof(
  fc.double(),
  fc.double({ min: -5, max: 5, noNaN: true }),
  fc.double({ min: 0, max: 250, noNaN: true }),
  fc.constantFrom(0, -0, 19.8, 20.2, 0.1, Infinity, -Infinity, NaN),
);
const numberOf = (text: string): number => (text.trim() === '' ? NaN : Number(text));

const isWhole = (value: unknown): boolean =>
  typeof value === 'number'
    ? Number.isFinite(value)
    : typeof value !== 'object' || value === null || Object.values(value).every(isWhole);

const wholeValue = (value: unknown): Breaches =>
  isWhole(value) ? [] : [`a value that is no number: ${JSON.stringify(value)}`];

const machines = MACHINE_NAMES.filter((name) => name !== 'none').map(readMachine);
const fit = fitOf({ style: 'inset', openingW: 500, openingH: 200 });
const corner = fc.record({ side: number, end: number, proud: number }, { requiredKeys: [] });

export const READING_PARSERS: readonly Fuzzed[] = [
  fuzzed('coupon readings', {
    inputs: fc.record({
      machine: fc.constantFrom(...machines),
      measured: fc.record({
        hole: number,
        piece: number,
        pin: fc.option(number),
        slot: fc.option(number),
        width: number,
        height: number,
      }),
    }),
    ofText(text) {
      const value = numberOf(text);
      const [machine = readMachine('router')] = machines;
      return {
        machine,
        measured: { hole: value, piece: value, pin: value, slot: value, width: value, height: value },
      };
    },
    weight: 4,
    check({ measured, machine }) {
      const { value, findings } = readCoupon(measured, machine);
      return [...findingBreaches(findings, ''), ...wholeValue(value)];
    },
  }),
  fuzzed('dial-in readings', {
    inputs: fc.record(
      { topLeft: corner, topRight: corner, bottomLeft: corner, bottomRight: corner },
      { requiredKeys: [] },
    ),
    ofText: (text) => ({ topLeft: { side: numberOf(text), end: numberOf(text), proud: numberOf(text) } }),
    check(seen) {
      const { value, findings } = dialIn(seen, fit, standard);
      return [...findingBreaches(findings, 'NaN'), ...wholeValue(value)];
    },
  }),
  fuzzed('paper settings', {
    inputs: fc.record({
      sheet: fc.oneof(
        fc.constantFrom(...Object.keys(SHEET_SIZES).filter(isSheet), 'as long as needed' as const),
        fc.record({ width: number, height: number }),
      ),
      margin: number,
      overlap: number,
      factors: fc.record({ x: number, y: number }),
    }),
    ofText: (text) => ({
      sheet: { width: numberOf(text), height: numberOf(text) },
      margin: numberOf(text),
      overlap: numberOf(text),
      factors: { x: numberOf(text), y: numberOf(text) },
    }),
    weight: 4,
    check(settings) {
      const findings = checkPaper(settings);
      return [...findingBreaches(findings, 'NaN'), ...(findings.length > 0 ? [] : wholeValue(settings))];
    },
  }),
];

function isSheet(name: string): name is keyof typeof SHEET_SIZES {
  return Object.hasOwn(SHEET_SIZES, name);
}
