import Papa from 'papaparse';
import { MOST_ROWS } from '../../core/order/lex-csv.ts';

/**
 * Cells as a spreadsheet puts them on the clipboard: tabs between them, a line for each row. Of more rows than an
 * order may have only the first are read, one too many among them.
 */
export function clipboardTable(text: string): readonly (readonly string[])[] {
  const { data } = Papa.parse<readonly string[]>(text, { delimiter: '\t', preview: MOST_ROWS + 2 });
  const rows = data.map((row) => row.map((cell) => cell.trim()));
  // A spreadsheet ends the last line with a break.
  const last = rows.at(-1);
  return last !== undefined && last.every((cell) => cell === '') ? rows.slice(0, -1) : rows;
}
