import type { Finding, Outcome } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import { besideUnread } from './beside-unread.ts';
import { REQUIRED_COLUMNS } from './columns.ts';
import { checkDate } from './date.ts';
import { defined } from './defined.ts';
import { lexCsv, type CsvRecord, type LexedCsv } from './lex-csv.ts';
import type { OrderTerms } from './raw-row.ts';
import { rawFromRecord } from './raw-from-record.ts';
import { readHeader } from './read-header.ts';
import { readRows } from './read-rows.ts';
import type { Drawer, LengthUnit, Order } from './types.ts';

/** What an order needs of a shop standard; a `ShopStandard` is one. */
export interface OrderVocabulary {
  readonly styles: readonly { readonly name: string }[];
  readonly cabinetKinds: Readonly<Record<string, unknown>>;
}

export interface CsvOptions {
  /** Name of the file, for findings. */
  readonly file: string;
  /** Name of the order. */
  readonly name: string;
  /** Unit of bare numbers. */
  readonly unit: LengthUnit;
  /** `YYYY-MM-DD` */
  readonly date?: string;
  readonly standard: OrderVocabulary;
}

/**
 * Reads an order from CSV text: one row a drawer, a cabinet's drawers from top to bottom. The value holds
 * the rows that are right; with an error among the findings nothing may be made of it.
 */
export function readOrderCsv(text: string, options: CsvOptions): Outcome<Order> {
  const { file, name, unit, date } = options;
  const lexed = lexCsv(text);
  const [header, ...records] = lexed.records;
  const order = { name, ...defined({ date }), unit };
  const findings = [...checkDate(date, { file }), ...brokenQuotes(lexed, file)];
  // A header with a broken quotation mark names nothing, and the row below it is no header.
  const headerBroken = header === undefined || (lexed.broken[0]?.row ?? Infinity) < header.row;
  if (headerBroken) {
    const empty = lexed.broken.length === 0 ? [error('order/empty', EMPTY, { file })] : [];
    return { value: { ...order, drawers: [] }, findings: [...findings, ...empty] };
  }
  const body = readRecords(header, records, lexed, options);
  const all = [...findings, ...body.findings].toSorted((a, b) => (a.at.row ?? 0) - (b.at.row ?? 0));
  return { value: { ...order, drawers: body.value }, findings: all };
}

/** The drawers of the records under their header, and the faults of both. */
function readRecords(
  first: CsvRecord,
  records: readonly CsvRecord[],
  { broken, delimiter }: LexedCsv,
  { file, unit, standard }: CsvOptions,
): Outcome<readonly Drawer[]> {
  const header = readHeader(first, file);
  const noRows = records.length === 0 && broken.length === 0;
  const none = noRows ? [noDrawers(first.row, file)] : [];
  const read = records.map((record) => rawFromRecord(record, header.columns, file, delimiter));
  const raws = read.flatMap(({ raw }) => (raw === undefined ? [] : [raw]));
  const columns = header.columns.filter((column) => column !== undefined && column !== null);
  const rows = readRows(raws, orderTerms(unit, standard), columns);

  const whole = new Set(raws.map((raw) => raw.row));
  const unread = [...broken, ...records].map(({ row }) => row).filter((row) => !whole.has(row));
  // The column that seems to be missing may stand in a row that could not be read.
  const mayBeThere = ({ code, at }: Finding): boolean =>
    code === 'order/column-gap' && besideUnread(at.row ?? 0, raws, unread);
  const cellFaults = read.flatMap((one) => one.findings);
  const faulty = new Set(cellFaults.map((finding) => finding.at.row));
  return {
    value: rows.value.filter((drawer) => !faulty.has(drawer.row)),
    findings: [
      ...header.findings,
      ...none,
      ...cellFaults,
      ...rows.findings.filter((finding) => !mayBeThere(finding)),
    ],
  };
}

const EMPTY = `The file is empty; its first row must name the columns ${REQUIRED_COLUMNS.join(', ')}.`;

const noDrawers = (row: number, file: string): Finding =>
  error('order/no-rows', `Row ${row}, the header, has no drawers below it; write one row for each drawer.`, {
    file,
    row,
  });

/** The terms of an order's cells under a shop standard. */
export const orderTerms = (unit: LengthUnit, standard: OrderVocabulary): OrderTerms => ({
  unit,
  styles: standard.styles.map((style) => style.name),
  cabinetKinds: Object.keys(standard.cabinetKinds),
});

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
