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
  /** The first row of those beyond `MOST_ROWS`, which are not read. */
  readonly tooManyAt?: number;
}

/** Rows of an order with something in them, without the header; 40 times the largest order known. */
export const MOST_ROWS = 20_000;

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
    const cut = cutRows(rest, delimiter, row, MOST_ROWS + 1 - records.length);
    records.push(...cut.records);
    row = cut.row;
    if (cut.tooMany) return { delimiter, records, broken, tooManyAt: row };
    if (cut.fault === undefined) break;
    broken.push({ row, kind: cut.fault.code === 'MissingQuotes' ? 'unterminated' : 'stray' });
    if (broken.length === MOST_BROKEN) return { delimiter, records, broken, stoppedAt: row };
    const lineEnd = rest.indexOf('\n', cut.fault.index ?? 0);
    rest = lineEnd === -1 ? '' : rest.slice(lineEnd + 1);
  }
  return { delimiter, records, broken };
}

interface CutRows {
  readonly records: readonly CsvRecord[];
  /** The last row that was looked at. */
  readonly row: number;
  /** What is wrong with that row's quotation marks. */
  readonly fault?: Papa.ParseError;
  /** That row is one too many. */
  readonly tooMany: boolean;
}

/** Cuts rows up to the first with a broken quotation mark, or until there are `most` with something in them. */
function cutRows(text: string, delimiter: string, above: number, most: number): CutRows {
  const records: CsvRecord[] = [];
  const faults: Papa.ParseError[] = [];
  let row = above;
  let tooMany = false;
  Papa.parse<string[]>(text, {
    delimiter,
    newline: '\n',
    // One by one: the rows of a spreadsheet that was saved with all its empty ones need not be held at once.
    step({ data: cells, errors }, parser) {
      row += 1;
      faults.push(...errors.filter(({ type }) => type === 'Quotes'));
      const holds = cells.some((cell) => cell.trim() !== '');
      tooMany = faults.length === 0 && holds && records.length === most;
      if (tooMany || faults.length > 0) parser.abort();
      else if (holds) records.push({ row, cells });
    },
  });
  const [fault] = faults;
  return { records, row, tooMany, ...(fault === undefined ? {} : { fault }) };
}

/** Characters within which the header begins and shows its delimiter. */
const LONGEST_HEADER = 100_000;

function delimiterOf(text: string): ',' | ';' {
  const header =
    text
      .slice(0, LONGEST_HEADER)
      .split('\n')
      .find((line) => line.trim() !== '') ?? '';
  const bare = header.replace(/"[^"]*"/g, '');
  return bare.split(';').length > bare.split(',').length ? ';' : ',';
}
