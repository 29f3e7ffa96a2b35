import * as fc from 'fast-check';
import { isDate } from '../../../core/order/date.ts';
import { parseEdgeCondition, writeEdgeCondition } from '../../../core/order/edge-condition.ts';
import { parseFrontConstruction, writeFrontConstruction } from '../../../core/order/front-construction.ts';
import { nameFault } from '../../../core/order/order-name.ts';
import { parsePullChoice } from '../../../core/order/pull-choice.ts';
import { parseLength, type LengthResult } from '../../../core/units/parse-length.ts';
import type { Refusal } from '../../../core/units/parse-number.ts';
import { sumLength } from '../../../core/units/sum-length.ts';
import { writeLength } from '../../../core/units/write-length.ts';
import { readStandard } from '../../rules/read-standard.ts';
import { anyText, textOf } from '../arbitraries.ts';
import { fuzzed, type Breaches, type Fuzzed } from '../fuzzed.ts';
import { reasonBreaches, roundTrip } from '../rules.ts';

const LENGTHS = [
  '1',
  '0',
  '15',
  '3/4',
  '1-7/16',
  '1/0',
  '36,5',
  '1.250',
  '-',
  '+',
  '*',
  '/',
  'in',
  'mm',
  'cm',
  '"',
  "'",
  '½',
  '⁷⁄₁₆',
  'e5',
  '(',
  '9999999999',
];
const EDGES = [
  'inset',
  'lap',
  'cover',
  'share',
  'reveal',
  'gap',
  'neighbor',
  'neighbour',
  'mid-rail',
  'bottom rail',
  'stile',
];
const FRONTS = [
  'slab',
  'five-piece',
  '5 piece',
  'fivepiece',
  'rails',
  'rail',
  'thinnest',
  'cope',
  'mitre',
  'miter',
];
const PULLS = ['bar', 'knob', 'cup', 'x2', 'x1', 'x3', 'x', ',', ';', '96', '128 mm', 'brushed'];

const units = fc.constantFrom('in' as const, 'mm' as const);
const { pulls } = readStandard('face-frame-undermount.json');

interface Unread {
  readonly text: string;
  readonly unit: 'in' | 'mm';
}

/** A reader of one short text, which is refused with a reason or else written and read back the same. */
const grammar = <Read extends { readonly ok: true }>(
  name: string,
  words: readonly string[],
  read: (unread: Unread) => Read | Refusal,
  back: (reading: Read, unread: Unread) => Breaches,
): Fuzzed =>
  fuzzed<Unread>(name, {
    inputs: fc.record({ text: textOf([...LENGTHS, ...words]), unit: units }),
    ofText: (text) => ({ text, unit: 'in' }),
    weight: 4,
    check(unread) {
      const reading = read(unread);
      return reading.ok ? back(reading, unread) : reasonBreaches(reading.reason, unread.text);
    },
  });

type LengthRead = Extract<LengthResult, { readonly ok: true }>;

const lengthBack = ({ mm }: LengthRead, { unit }: Unread): Breaches => [
  ...(Number.isFinite(mm) && Math.abs(mm) <= 10_000 ? [] : [`a length of ${mm}`]),
  ...roundTrip('length', { ok: true, mm }, parseLength(writeLength(mm, unit), { unit, sign: 'any' })),
];

export const GRAMMARS: readonly Fuzzed[] = [
  grammar('length', [], ({ text, unit }) => parseLength(text, { unit, sign: 'any' }), lengthBack),
  grammar(
    'length field (sums)',
    [' + ', ' * ', ' / ', ' - '],
    ({ text, unit }) => sumLength(text, { unit, sign: 'any' }),
    lengthBack,
  ),
  grammar(
    'edge',
    EDGES,
    ({ text, unit }) => parseEdgeCondition(text, { unit }),
    ({ condition }, { unit }) =>
      roundTrip(
        'edge',
        { ok: true, condition },
        parseEdgeCondition(writeEdgeCondition(condition, unit), { unit }),
      ),
  ),
  grammar(
    'front',
    FRONTS,
    ({ text, unit }) => parseFrontConstruction(text, { unit }),
    ({ front }, { unit }) =>
      roundTrip(
        'front',
        { ok: true, front },
        parseFrontConstruction(writeFrontConstruction(front, unit), { unit }),
      ),
  ),
  grammar(
    'pull',
    PULLS,
    ({ text }) => parsePullChoice(text, pulls),
    ({ choice }) => (Object.hasOwn(pulls, choice.sort) ? [] : [`the sort ${choice.sort}`]),
  ),
  fuzzed<string>('name of an order', {
    inputs: anyText,
    ofText: (text) => text,
    weight: 4,
    check(text) {
      const fault = nameFault(text);
      return fault === undefined ? [] : reasonBreaches(fault, text);
    },
  }),
  fuzzed<string>('date', {
    inputs: textOf(['2031', '-', '02', '29', '13', '0', '+002031']),
    ofText: (text) => text,
    weight: 4,
    check: (text) => (isDate(text) && !/^\d{4}-\d{2}-\d{2}$/.test(text) ? [`took ${text} for a date`] : []),
  }),
];
