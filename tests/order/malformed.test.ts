import { describe, expect, test } from 'vitest';
import { readOrderCsv } from '../../core/order/read-csv.ts';
import { readStandard } from '../rules/read-standard.ts';
import { MALFORMED_CABINETS } from './malformed/cabinets.ts';
import { MALFORMED_CELLS } from './malformed/cells.ts';
import { MALFORMED_FILE } from './malformed/file.ts';

const standard = readStandard('face-frame-undermount.json');
const options = { file: 'quay.csv', name: 'quay', unit: 'in', standard } as const;

const all = [...MALFORMED_FILE, ...MALFORMED_CELLS, ...MALFORMED_CABINETS];

describe('readOrderCsv says where, what was read, and what would be accepted', () => {
  test.each(all)('$name', ({ csv, kept, findings }) => {
    const read = readOrderCsv(csv, options);
    expect(read.findings.map(({ code, at, message }) => [code, at.row, at.column, message])).toEqual(
      findings,
    );
    for (const { code, at, severity } of read.findings) {
      expect(at.file).toBe('quay.csv');
      expect(severity).toBe(code === 'order/qty-differs' ? 'warning' : 'error');
    }
    expect(read.value.drawers).toHaveLength(kept);
  });

  test('there are at least 45 kinds, each with a finding', () => {
    expect(new Set(all.map(({ name }) => name)).size).toBeGreaterThanOrEqual(45);
    expect(all.filter(({ findings }) => findings.length === 0)).toEqual([]);
  });

  test('the faults of a file are the same with CRLF, with a byte order mark and with blank lines at the end', () => {
    for (const { csv, findings } of all) {
      if (csv.trim() === '' || csv.startsWith('\ufeff') || findings.some(([code]) => code === 'order/quote'))
        continue;
      const dressed = `\ufeff${csv.replaceAll('\n', '\r\n')}\r\n\r\n`;
      expect(readOrderCsv(dressed, options)).toEqual(readOrderCsv(csv, options));
    }
  });

  test('all faults of a file are reported at once, in the order of the rows', () => {
    const csv = all
      .filter(({ csv: one }) => one.startsWith('cabinet,drawer,qty,style,opening_w,opening_h\n'))
      .map(({ csv: one }, index) => one.split('\n')[1]?.replace(/^B1/, `B${index}`) ?? '');
    const { findings } = readOrderCsv(
      ['cabinet,drawer,qty,style,opening_w,opening_h', ...csv].join('\n'),
      options,
    );
    const atRows = findings.map(({ at }) => at.row ?? 0);
    expect(atRows).toEqual([...atRows].sort((a, b) => a - b));
    expect(new Set(atRows).size).toBeGreaterThan(25);
  });

  test('after 20 broken quotation marks reading stops, and says so', () => {
    const lines = Array.from({ length: 25 }, (_, index) => `"B${index}"x,top,1,inset,15,6`);
    const { findings } = readOrderCsv(
      ['cabinet,drawer,qty,style,opening_w,opening_h', ...lines].join('\n'),
      options,
    );
    expect(findings).toHaveLength(21);
    expect(findings.at(-1)).toMatchObject({
      code: 'order/quote-stopped',
      message:
        'Row 21: reading stopped here, after 20 broken quotation marks; mend them and read the file again.',
      at: { file: 'quay.csv', row: 21 },
    });
  });

  test('a date that is no day of the calendar', () => {
    for (const date of ['2031-02-29', '20.5.2031', '2031-13-01', '']) {
      const { findings } = readOrderCsv('cabinet,drawer,qty,style,opening_w,opening_h\nB1,top,1,inset,15,6', {
        ...options,
        date,
      });
      expect(findings.map(({ code, message }) => [code, message])).toEqual([
        ['order/date', `The order's date reads “${date}”: write a day as YYYY-MM-DD, such as 2031-05-20.`],
      ]);
    }
  });
});
