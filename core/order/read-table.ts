import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import { REQUIRED_COLUMNS, type OrderColumn } from './columns.ts';
import { lexCsv, MOST_ROWS, type LexedCsv } from './lex-csv.ts';
import { rawFromRecord } from './raw-from-record.ts';
import type { RawRow } from './raw-row.ts';
import { readHeader, tooManyColumns } from './read-header.ts';

/** The cells of a CSV file under their columns, before any is read. */
export interface CsvTable {
  /** The columns that the header names rightly. */
  readonly columns: readonly OrderColumn[];
  /** The rows whose cells could be put under their columns. */
  readonly raws: readonly RawRow[];
  /** Rows of the file below the header that hold something, sound or not, as a spreadsheet counts. */
  readonly rows: readonly number[];
  /** Those of them that have a finding here. */
  readonly faultyRows: readonly number[];
  /** What is wrong with quotation marks, header and number of cells. */
  readonly findings: readonly Finding[];
}

const NOTHING = { columns: [], raws: [], rows: [], faultyRows: [] };

/** Cuts CSV text into cells, and puts them under the columns that its header names. */
export function readTable(text: string, file: string): CsvTable {
  const lexed = lexCsv(text);
  const [header, ...records] = lexed.records;
  const broken = brokenQuotes(lexed, file);
  // A header with a broken quotation mark names nothing, and the row below it is no header.
  if (header === undefined || (lexed.broken[0]?.row ?? Infinity) < header.row) {
    const empty = lexed.broken.length === 0 ? [error('order/empty', EMPTY, { file })] : [];
    return { ...NOTHING, findings: [...broken, ...empty] };
  }
  const tooWide = tooManyColumns(header, file);
  if (tooWide !== undefined) return { ...NOTHING, findings: [...broken, tooWide] };
  const { columns, findings } = readHeader(header, file);
  const none = records.length === 0 && broken.length === 0 ? [noDrawers(header.row, file)] : [];
  const read = records.map((record) => rawFromRecord(record, columns, file, lexed.delimiter));
  const cellFaults = read.flatMap((one) => one.findings);
  return {
    columns: columns.filter((column) => column !== undefined && column !== null),
    raws: read.flatMap(({ raw }) => (raw === undefined ? [] : [raw])),
    rows: [...lexed.broken, ...records].map(({ row }) => row),
    faultyRows: cellFaults.flatMap(({ at }) => at.row ?? []),
    findings: [...broken, ...findings, ...none, ...cellFaults, ...tooManyRows(lexed, file)],
  };
}

const EMPTY = `The file is empty; its first row must name the columns ${REQUIRED_COLUMNS.join(', ')}.`;

const noDrawers = (row: number, file: string): Finding =>
  error('order/no-rows', `Row ${row}, the header, has no drawers below it; write one row for each drawer.`, {
    file,
    row,
  });

function tooManyRows({ tooManyAt: row }: LexedCsv, file: string): readonly Finding[] {
  if (row === undefined) return [];
  const message = `Row ${row}: reading stopped here, after ${MOST_ROWS} rows with something in them, which is all that an order may have; split it into several orders.`;
  return [error('order/too-many-rows', message, { file, row }, { most: MOST_ROWS })];
}

function brokenQuotes({ broken, stoppedAt }: LexedCsv, file: string): readonly Finding[] {
  const findings = broken.map(({ row, kind }) => {
    const what =
      kind === 'unterminated'
        ? 'a quotation mark is opened and never closed; close it'
        : 'a quoted cell goes on after its closing quotation mark; write a quotation mark inside a quoted cell twice';
    return error('order/quote', `Row ${row}: ${what}.`, { file, row });
  });
  if (stoppedAt === undefined) return findings;
  const message = `Row ${stoppedAt}: reading stopped here, after ${broken.length} broken quotation marks; mend them and read the file again.`;
  return [
    ...findings,
    error('order/quote-stopped', message, { file, row: stoppedAt }, { broken: broken.length }),
  ];
}
