import * as fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { readOrderCsv } from '../../../core/order/read-csv.ts';
import { writeOrderCsv } from '../../../core/order/write-csv.ts';
import { draftFromCsv } from '../../../core/project/draft-from-csv.ts';
import { clipboardTable } from '../../../renderer/order/clipboard-table.ts';
import { readMachine } from '../../jigs/setups.ts';
import { readStandard } from '../../rules/read-standard.ts';
import { anyText, mangledText, textOf } from '../arbitraries.ts';
import { fuzzed, type Fuzzed } from '../fuzzed.ts';
import { findingBreaches, roundTrip } from '../rules.ts';

const ORDERS = ['harbor-library', 'boathouse-frameless', 'faulty'].map((name) =>
  readFileSync(new URL(`../../../assets/orders/${name}.csv`, import.meta.url), 'utf8'),
);
const standard = readStandard('face-frame-undermount.json');
const options = { file: 'a.csv', name: 'quay', unit: 'in', standard } as const;

const CELLS = [
  'B1',
  'top',
  '1',
  '2',
  'inset',
  '15-3/4',
  '6',
  'share mid-rail gap 1/8',
  'slab',
  'bar 96 mm',
  '"',
  '',
  '99',
  'middle',
];
const table = fc
  .array(fc.array(textOf(CELLS), { minLength: 8, maxLength: 11 }), { maxLength: 6 })
  .map((rows) =>
    [
      'cabinet,drawer,qty,style,opening_w,opening_h,column,left,front,pull',
      ...rows.map((row) => row.join(',')),
    ].join('\n'),
  );
const csv = fc.oneof(mangledText(ORDERS), table, anyText);

export const ORDER_PARSERS: readonly Fuzzed[] = [
  fuzzed<string>('order table (CSV)', {
    inputs: csv,
    ofText: (text) => text,
    weight: 0.3,
    check(text) {
      const { value, findings } = readOrderCsv(text, options);
      const wrong = new Set(findings.filter(({ severity }) => severity === 'error').map(({ at }) => at.row));
      const breaches = [
        ...findingBreaches(findings, text, 'a.csv'),
        ...(findings.length === 0 && value.drawers.length === 0 ? ['nothing read and nothing said'] : []),
        ...value.drawers.flatMap(({ row }) => (wrong.has(row) ? [`row ${row} is both right and wrong`] : [])),
      ];
      if (breaches.length > 0 || wrong.size > 0) return breaches;
      const again = readOrderCsv(writeOrderCsv(value), { ...options, unit: 'mm' });
      const drawers = (all: typeof value.drawers) => all.map((drawer) => ({ ...drawer, row: 0 }));
      return roundTrip('order', drawers(value.drawers), drawers(again.value.drawers));
    },
  }),
  fuzzed<string>('draft of an order table', {
    inputs: csv,
    ofText: (text) => text,
    weight: 0.5,
    check(text) {
      const around = { machine: readMachine('router'), registration: 'edge' } as const;
      const { value, findings } = draftFromCsv(text, { ...options, ...around });
      return [
        ...findingBreaches(findings, text, 'a.csv'),
        ...(new Set(value.rows.map(({ id }) => id)).size === value.rows.length
          ? []
          : ['two rows have one id']),
      ];
    },
  }),
  fuzzed<string>('table on the clipboard', {
    inputs: fc.oneof(textOf([...CELLS, '\t', '\t', '\n']), anyText),
    ofText: (text) => text,
    weight: 2,
    check: (text) =>
      clipboardTable(text).flatMap((row) =>
        row.flatMap((cell) => (cell === cell.trim() ? [] : ['a cell with blanks'])),
      ),
  }),
];
