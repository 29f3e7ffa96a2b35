import Papa from 'papaparse';

/** A cell that starts so is run as a formula by a spreadsheet. */
const FORMULA = /^[=+\-@\t\r]/;

/** Decimals of a number in a table: finer than any length that is read off it. */
const DECIMALS = 6;

/**
 * A table as CSV (RFC 4180, CRLF, also after the last row). Numbers are plain decimals without exponent;
 * text that a spreadsheet would run as a formula gets a leading apostrophe.
 *
 *     writeCsv(['jig', 'mm'], [['B1', -3.5], ['=1+1', 0]])  // jig,mm B1,-3.5 '=1+1,0
 */
export function writeCsv(
  columns: readonly string[],
  rows: readonly (readonly (string | number)[])[],
): string {
  for (const row of rows) {
    if (row.length !== columns.length) {
      throw new RangeError(`writeCsv: a row of ${row.length} cells under ${columns.length} columns`);
    }
  }
  const data = [columns, ...rows].map((row) => row.map(cell));
  return `${Papa.unparse(data, { newline: '\r\n', header: false })}\r\n`;
}

function cell(value: string | number): string {
  if (typeof value === 'string') return FORMULA.test(value) ? `'${value}` : value;
  if (!Number.isFinite(value) || Math.abs(value) >= 1e15)
    throw new RangeError(`writeCsv: ${value} is no number for a table`);
  const text = value.toFixed(DECIMALS).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}
