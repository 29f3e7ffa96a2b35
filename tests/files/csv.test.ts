import { execFileSync } from 'node:child_process';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { writeCsv } from '../../core/files/csv.ts';

const SEED = 5_150;

/** Python's csv module as an independent reader: rows of each text. */
function readByPython(texts: readonly string[]): readonly (readonly (readonly string[])[])[] {
  const script =
    'import csv,io,json,sys\nprint(json.dumps([list(csv.reader(io.StringIO(t,newline=""),strict=True)) for t in json.load(sys.stdin)]))';
  const answer = execFileSync('/usr/bin/python3', ['-c', script], {
    input: JSON.stringify(texts),
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  return z.array(z.array(z.array(z.string()))).parse(JSON.parse(answer));
}

describe('writeCsv', () => {
  test('ends every row with CRLF and quotes commas, quotes and line breaks as RFC 4180 says', () => {
    expect(
      writeCsv(
        ['jig', 'note'],
        [
          ['B1', 'a,b'],
          ['B2', '1 7/16"'],
          ['B3', 'two\nlines'],
        ],
      ),
    ).toBe('jig,note\r\nB1,"a,b"\r\nB2,"1 7/16"""\r\nB3,"two\nlines"\r\n');
  });

  test('writes numbers as plain decimals, negative ones too', () => {
    expect(writeCsv(['mm'], [[-3.5], [0], [-0], [1e-7], [33.3375], [120], [0.1 + 0.2], [1e14]])).toBe(
      'mm\r\n-3.5\r\n0\r\n0\r\n0\r\n33.3375\r\n120\r\n0.3\r\n100000000000000\r\n',
    );
  });

  test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1'])(
    'puts an apostrophe before the text %j',
    (text) => {
      expect(readByPython([writeCsv(['note'], [[text]])])).toEqual([[['note'], [`'${text}`]]]);
    },
  );

  test('also in the header', () => {
    expect(writeCsv(['=x'], [])).toBe("'=x\r\n");
  });

  test('throws for a row of another width and for NaN, which are programmers’ errors', () => {
    expect(() => writeCsv(['a', 'b'], [['1']])).toThrow(RangeError);
    expect(() => writeCsv(['a'], [[Number.NaN]])).toThrow(RangeError);
    expect(() => writeCsv(['a'], [[Number.POSITIVE_INFINITY]])).toThrow(RangeError);
  });

  test(`another reader sees the same cells in 300 random tables, seed ${SEED}`, () => {
    const text = fc.string({
      unit: fc.constantFrom('a', 'Ä', '"', ',', '\r\n', '\n', ' ', '=', '-', "'", '″'),
      maxLength: 8,
    });
    const tables = fc
      .integer({ min: 2, max: 5 })
      .chain((width) =>
        fc.array(fc.array(text, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 6 }),
      );
    const samples = fc.sample(tables, { seed: SEED, numRuns: 300 });
    const written = samples.map(([columns = [], ...rows]) => writeCsv(columns, rows));
    const expected = samples.map((rows) =>
      rows.map((row) => row.map((cell) => (/^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell))),
    );
    expect(readByPython(written)).toEqual(expected);
  });
});
