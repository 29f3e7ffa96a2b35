import * as fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Outcome } from '../../core/findings/finding.ts';
import { readOrderCsv } from '../../core/order/read-csv.ts';
import type { Order } from '../../core/order/types.ts';
import { readStandard } from '../rules/read-standard.ts';

const SEED = 20_310_530;
const standard = readStandard('face-frame-undermount.json');
const demo = readFileSync(new URL('../../assets/orders/harbor-library.csv', import.meta.url), 'utf8');

const read = (text: string): Outcome<Order> =>
  readOrderCsv(text, { file: 'mangled.csv', name: 'mangled', unit: 'in', standard });

/** What does not hold of a reading, and must of every one. */
function breaches({ value, findings }: Outcome<Order>): readonly string[] {
  const wrong = new Set(findings.filter(({ severity }) => severity === 'error').map(({ at }) => at.row));
  const rows = value.drawers.flatMap(({ row, openingW, qty }) => {
    if (wrong.has(row)) return [`row ${row} is both right and wrong`];
    return openingW > 0 && qty >= 1
      ? []
      : [`row ${row} has an opening of ${openingW} and a quantity of ${qty}`];
  });
  const messages = findings.flatMap(({ at, message }) => {
    if (at.file !== 'mangled.csv') return [`no file: ${message}`];
    if (!/^[A-Z].*\.$/s.test(message)) return [`no sentence: ${message}`];
    return at.row === undefined || message.startsWith(`Row ${at.row}`)
      ? []
      : [`no row ${at.row}: ${message}`];
  });
  const silent = value.drawers.length === 0 && findings.length === 0 ? ['nothing read and nothing said'] : [];
  return [...rows, ...messages, ...silent];
}

const MARKS = ['"', '""', ',', ';', '\n', '\r\n', '\t', ' ', '0', '-', '/', 'x', '\u0000', '½', '\ufffd', ''];

/** The demo order with pieces cut out of it and marks put in their places. */
const mangledDemo = fc
  .array(
    fc.record({
      at: fc.nat(demo.length),
      length: fc.nat(6),
      mark: fc.constantFrom(...MARKS),
    }),
    { minLength: 1, maxLength: 8 },
  )
  .map((edits) =>
    edits.reduce((text, { at, length, mark }) => text.slice(0, at) + mark + text.slice(at + length), demo),
  );

describe('readOrderCsv never throws', () => {
  test('readOrderCsv(the demo order mangled) has findings that name their rows', () => {
    fc.assert(
      fc.property(mangledDemo, (text) => {
        expect(breaches(read(text))).toEqual([]);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  test('readOrderCsv(any text) has findings', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        expect(breaches(read(text))).toEqual([]);
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });

  test('readOrderCsv(cells of all sorts under the right header) has findings', () => {
    const cell = fc.oneof(
      fc.constantFrom('', '1', '15-3/4', 'inset', 'B1', 'top', 'share mid-rail gap 1/8', 'slab', '"'),
      fc.string({ unit: 'grapheme', maxLength: 8 }),
    );
    const row = fc.array(cell, { minLength: 6, maxLength: 9 }).map((cells) => cells.join(','));
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 6 }), (rows) => {
        expect(
          breaches(
            read(['cabinet,drawer,qty,style,opening_w,opening_h,column,left,front', ...rows].join('\n')),
          ),
        ).toEqual([]);
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });

  test('readOrderCsv(5000 cabinets) reads every one', () => {
    const rows = Array.from(
      { length: 20_000 },
      (_, index) => `B${index >> 2},d${index & 3},1,inset,15-3/4,6`,
    );
    const { value, findings } = read(['cabinet,drawer,qty,style,opening_w,opening_h', ...rows].join('\n'));
    expect(findings).toEqual([]);
    expect(value.drawers).toHaveLength(20_000);
  });

  test('readOrderCsv(20 thousand wrong rows) names every one', () => {
    const rows = Array.from({ length: 20_000 }, (_, index) => `B${index},d,0,flush,x,y,9`);
    const { findings } = read(['cabinet,drawer,qty,style,opening_w,opening_h,column', ...rows].join('\n'));
    expect(findings).toHaveLength(100_000);
  });
});
