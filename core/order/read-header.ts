import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import { columnNamed, ORDER_COLUMNS, plainHeader, REQUIRED_COLUMNS, type OrderColumn } from './columns.ts';
import type { CsvRecord } from './lex-csv.ts';
import { quoteText } from './quote-text.ts';
import { suggest } from './suggest.ts';

export interface Header {
  /** The column of each cell; undefined where the header is wrong, null where it is empty. */
  readonly columns: readonly (OrderColumn | undefined | null)[];
  readonly findings: readonly Finding[];
}

/** Cells of a header that names something: a spreadsheet with more than these is no order. */
const MOST_COLUMNS = 100;

/** A header of so many columns that none is worth reading; undefined when there are not. */
export function tooManyColumns({ row, cells }: CsvRecord, file: string): Finding | undefined {
  const columns = 1 + cells.findLastIndex((cell) => cell.trim() !== '');
  if (columns <= MOST_COLUMNS) return undefined;
  const message = `Row ${row}, the header, has ${columns} columns; ${MOST_COLUMNS} are read at most, of which an order has ${ORDER_COLUMNS.length}: ${ORDER_COLUMNS.join(', ')}.`;
  return error('order/too-many-columns', message, { file, row }, { columns, most: MOST_COLUMNS });
}

/** Reads a header in any order and case, and reports unknown, repeated, unnamed and missing columns. */
export function readHeader(header: CsvRecord, file: string): Header {
  const at = { file, row: header.row };
  const where = `Row ${header.row}, the header,`;
  if (header.cells.length === 1 && /\t/.test(header.cells[0] ?? '')) {
    const message = `${where} is separated by tabs; save the file with commas or semicolons between the cells.`;
    return { columns: [undefined], findings: [error('order/delimiter', message, at)] };
  }
  const findings: Finding[] = [];
  const meant = new Set<OrderColumn>();
  const lastNamed = header.cells.findLastIndex((cell) => cell.trim() !== '');
  const columns = header.cells.slice(0, lastNamed + 1).map((cell, index): OrderColumn | undefined | null => {
    const name = cell.trim();
    if (name === '') return null;
    const column = columnNamed(name);
    if (column === undefined) {
      findings.push(unknown(name, index));
      return undefined;
    }
    const first = header.cells.findIndex((other) => columnNamed(other) === column);
    if (first === index) return column;
    const message = `${where} has the column ${column} twice, as cells ${first + 1} and ${index + 1}; keep one.`;
    findings.push(error('order/column-duplicate', message, { ...at, column }, { column }));
    return undefined;
  });

  function unknown(name: string, index: number): Finding {
    const free = ORDER_COLUMNS.filter((column) => !header.cells.some((cell) => columnNamed(cell) === column));
    const near = suggest(plainHeader(name), free);
    if (near !== undefined) meant.add(near);
    const hint = near === undefined ? '' : ` Did you mean ${near}?`;
    const message = `${where} has the unknown column ${quoteText(name)} as cell ${index + 1}.${hint} Accepted are ${ORDER_COLUMNS.join(', ')}.`;
    return error('order/column-unknown', message, { ...at, column: name }, { read: name });
  }

  for (const column of REQUIRED_COLUMNS) {
    // A mistyped column has been named already.
    if (columns.includes(column) || meant.has(column)) continue;
    const message = `${where} has no column ${column}; add it. Required are ${REQUIRED_COLUMNS.join(', ')}.`;
    findings.push(error('order/column-missing', message, { ...at, column }, { column }));
  }
  return { columns, findings };
}
