import { describe, expect, test } from 'vitest';
import { MOST_ROWS } from '../../core/order/lex-csv.ts';
import { readOrderCsv } from '../../core/order/read-csv.ts';
import { parseProject } from '../../core/project/parse-project.ts';
import { readStandard, standardJson } from '../rules/read-standard.ts';

const options = {
  file: 'a.csv',
  name: 'quay',
  unit: 'in',
  standard: readStandard('face-frame-undermount.json'),
} as const;
const HEADER = 'cabinet,drawer,qty,style,opening_w,opening_h';
const read = (text: string) => readOrderCsv(text, options);
const messages = (text: string): readonly string[] => read(text).findings.map(({ message }) => message);

/** ms. Each takes far below a second on a machine without other work; one that grows with the square never ends. */
const SOON = 60_000;

describe('readOrderCsv of files that no shop has', () => {
  test(
    'a million rows: stops behind the most that an order may have, and says at which row',
    () => {
      const { value, findings } = read(`${HEADER}\n${'B1,top,1,inset,15,6\n'.repeat(1_000_000)}`);
      expect(value.drawers.length).toBeLessThanOrEqual(MOST_ROWS);
      expect(findings.at(-1)).toMatchObject({
        code: 'order/too-many-rows',
        message: `Row ${MOST_ROWS + 2}: reading stopped here, after ${MOST_ROWS} rows with something in them, which is all that an order may have; split it into several orders.`,
        at: { file: 'a.csv', row: MOST_ROWS + 2 },
      });
    },
    SOON,
  );

  test(
    'a million empty rows below the drawers, as a spreadsheet may write them, do no harm',
    () => {
      const { value, findings } = read(`${HEADER}\nB1,top,1,inset,15,6\n${',,,,,\n'.repeat(1_000_000)}`);
      expect([value.drawers.length, findings]).toEqual([1, []]);
    },
    SOON,
  );

  test(
    'sixty thousand columns are told in one sentence',
    () => {
      expect(messages(`${'x,'.repeat(60_000)}y\n1\n`)).toEqual([
        expect.stringContaining('Row 1, the header, has 60001 columns; 100 are read at most'),
      ]);
      expect(messages(`${'cabinet,'.repeat(60_000)}\n`)).toHaveLength(1);
    },
    SOON,
  );

  test(
    'a cell of ten million characters is told with its length, and is not repeated',
    () => {
      const long = 'a'.repeat(10_000_000);
      const found = messages(
        `${HEADER},left,front,note\n${long},top,1,inset,${long},6,${long},${long},${long}\n`,
      );
      expect(found).toHaveLength(5);
      for (const message of found) {
        expect(message).toContain('it has 10000000 characters; no cell takes more than 5000');
        expect(message.length).toBeLessThan(300);
      }
      expect(messages(`${long},drawer\nB1,top\n`)[0]?.length).toBeLessThan(1000);
    },
    SOON,
  );

  test('control characters, half surrogates and names of prototypes in cells are told or are names', () => {
    for (const cell of ['a\u0000b', 'a\u001b[2Jb', 'a\u202eb']) {
      expect(messages(`${HEADER}\n${cell},top,1,inset,15,6\n`)[0]).toContain('unprintable character');
    }
    const { value, findings } = read(`${HEADER}\n__proto__,constructor,1,inset,15,6\n`);
    expect(findings).toEqual([]);
    expect(value.drawers[0]).toMatchObject({ cabinet: '__proto__', drawer: 'constructor' });
    expect(messages(`${HEADER},pull,species\nB1,top,1,__proto__,15,6,constructor,toString\n`)).toHaveLength(
      3,
    );
  });

  test('the same rows with every kind of line end, also mixed', () => {
    const rows = [HEADER, 'B1,top,1,inset,15,6', 'B1,low,1,inset,15,9', ''];
    const expected = read(rows.join('\n'));
    expect(expected.findings).toEqual([]);
    for (const ends of [['\r\n'], ['\r'], ['\r', '\n', '\r\n'], ['\r\n', '\r', '\n']]) {
      const text = rows.map((row, index) => `${row}${ends[index % ends.length] ?? ''}`).join('');
      expect(read(`\ufeff${text}`)).toEqual(expected);
    }
  });
});

describe('parseProject of files that no shop has', () => {
  const project = (drawers: unknown): object => ({
    format: 'overhang-project',
    version: 2,
    order: { name: 'quay', unit: 'in', drawers },
    standard: standardJson('face-frame-undermount.json'),
  });
  const faults = (json: unknown): readonly string[] =>
    parseProject(json, 'a.json').findings.map(({ message }) => message);

  test(
    'more drawers than an order may have are told in one sentence',
    () => {
      expect(faults(project(Array.from({ length: MOST_ROWS + 1 }, () => 7)))).toEqual([
        `Field order.drawers: there are more than ${MOST_ROWS} drawers; split the order into several.`,
      ]);
    },
    SOON,
  );

  test(
    'very many faults are told up to a thousand, with how many there are more',
    () => {
      const found = faults(project(Array.from({ length: 5000 }, () => 7)));
      expect(found).toHaveLength(1001);
      expect(found.at(-1)).toBe('The document has 4000 faults more; mend these first.');
    },
    SOON,
  );

  test.each([null, true, 7, 'text', [], [[]], {}, { format: 7 }, { format: 'overhang-project' }])(
    'another type, %j, is told with what a project begins with',
    (json) => {
      expect(faults(json)).toEqual([
        'This is not a project file: one begins with "format": "overhang-project", "version": 2.',
      ]);
    },
  );
});
