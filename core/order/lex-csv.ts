import Papa from 'papaparse';

/** One record of a CSV: its cells as written, and its row as a spreadsheet counts. */
export interface CsvRecord {
  readonly row: number;
  readonly cells: readonly string[];
}

/** A quotation mark that breaks its record: opened and never closed, or closed in mid-cell. */
export interface BrokenQuote {
  readonly row: number;
  readonly kind: 'unterminated' | 'stray';
}

export interface LexedCsv {
  readonly delimiter: ',' | ';';
  /** The records that are sound; blank ones are left out. */
  readonly records: readonly CsvRecord[];
  readonly broken: readonly BrokenQuote[];
  /** Row after which reading stopped, when too many quotation marks were broken to go on. */
  readonly stoppedAt?: number;
}

/** Broken quotation marks after which the rest of a file is not worth guessing at. */
const MOST_BROKEN = 20;

/**
 * Cuts CSV text (RFC 4180) into records. A byte order mark is dropped, the delimiter is what the header
 * has more of, and after a broken quotation mark reading goes on at the next line, so that one slip does
 * not hide the faults below it.
 */
export function lexCsv(text: string): LexedCsv {
  const lines = text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const delimiter = delimiterOf(lines);
  const records: CsvRecord[] = [];
  const broken: BrokenQuote[] = [];
  let rest = lines;
  let row = 0;
  while (rest !== '') {
    const parsed = Papa.parse<string[]>(rest, { delimiter, newline: '\n' });
    const fault = parsed.errors.find((found) => found.type === 'Quotes');
    const sound = fault === undefined ? parsed.data : parsed.data.slice(0, fault.row ?? 0);
    for (const cells of sound) {
      row += 1;
      if (cells.some((cell) => cell.trim() !== '')) records.push({ row, cells });
    }
    if (fault === undefined) break;
    row += 1;
    broken.push({ row, kind: fault.code === 'MissingQuotes' ? 'unterminated' : 'stray' });
    if (broken.length === MOST_BROKEN) return { delimiter, records, broken, stoppedAt: row };
    const lineEnd = rest.indexOf('\n', fault.index ?? 0);
    rest = lineEnd === -1 ? '' : rest.slice(lineEnd + 1);
  }
  return { delimiter, records, broken };
}

function delimiterOf(text: string): ',' | ';' {
  const header = text.split('\n').find((line) => line.trim() !== '') ?? '';
  const bare = header.replace(/"[^"]*"/g, '');
  return bare.split(';').length > bare.split(',').length ? ';' : ',';
}
