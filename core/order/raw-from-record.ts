import type { Finding, Place } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import type { OrderColumn } from './columns.ts';
import type { CsvRecord } from './lex-csv.ts';
import { quoteText } from './quote-text.ts';
import type { RawRow } from './raw-row.ts';

/** What a record of a CSV file becomes: cells by column, unless nobody can tell which is which. */
export interface FromRecord {
  readonly raw?: RawRow;
  readonly findings: readonly Finding[];
}

/**
 * Puts the cells of a record under the columns of the header. Empty cells beyond the last column do no
 * harm, as spreadsheets write them; a cell too few or too many does, as nobody knows which.
 */
export function rawFromRecord(
  record: CsvRecord,
  columns: readonly (OrderColumn | undefined | null)[],
  file: string,
  delimiter: ',' | ';',
): FromRecord {
  const { row } = record;
  const cells = record.cells.map((cell) => cell.trim());
  const extra = cells.slice(columns.length).some((cell) => cell !== '');
  if (extra || cells.length < columns.length) {
    return { findings: [wrongCount(record, columns.length, file, delimiter)] };
  }
  const findings: Finding[] = [];
  const named: Partial<Record<OrderColumn, string>> = {};
  for (const [index, column] of columns.entries()) {
    const cell = cells[index] ?? '';
    if (cell === '' || column === undefined) continue;
    if (column === null) {
      const message = `Row ${row} reads ${quoteText(cell)} as cell ${index + 1}, whose column has no name in the header; name it, or empty the cell.`;
      findings.push(error('order/column-unnamed', message, { file, row }, { read: cell }));
      continue;
    }
    // A quotation mark after a blank is text to a CSV reader, so a comma inside would have cut the cell.
    if (/^\s+"/.test(record.cells[index] ?? '')) {
      const message = `Row ${row}, ${column}, reads ${quoteText(cell)}: a quotation mark stands after a blank; put it first in the cell, or leave it out.`;
      findings.push(error('order/quote', message, { file, row, column }, { read: cell }));
    }
    named[column] = cell;
  }
  const at = (column: OrderColumn): Place => {
    const place = { file, row, column };
    if (named.cabinet === undefined || named.drawer === undefined) return place;
    return { ...place, drawer: `${named.cabinet} / ${named.drawer}` };
  };
  return { raw: { row, cells: named, at }, findings };
}

function wrongCount(record: CsvRecord, expected: number, file: string, delimiter: ',' | ';'): Finding {
  const { row, cells } = record;
  const hint =
    cells.length > expected && delimiter === ','
      ? ' A comma inside a cell needs quotation marks around the cell.'
      : '';
  const message = `Row ${row} has ${cells.length} cells, but the header has ${expected} columns; write one cell, empty or not, for each column.${hint}`;
  return error('order/cells', message, { file, row }, { cells: cells.length, expected });
}
