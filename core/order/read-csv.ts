import type { Finding, Outcome } from '../findings/finding.ts';
import { besideUnread } from './beside-unread.ts';
import { checkDate } from './date.ts';
import { defined } from './defined.ts';
import type { OrderTerms, PullSort } from './raw-row.ts';
import { readRows } from './read-rows.ts';
import { readTable } from './read-table.ts';
import type { LengthUnit, Order } from './types.ts';

/** What an order needs of a shop standard; a `ShopStandard` is one. */
export interface OrderVocabulary {
  readonly styles: readonly { readonly name: string }[];
  readonly cabinetKinds: Readonly<Record<string, unknown>>;
  readonly species: Readonly<Record<string, unknown>>;
  readonly pulls: Readonly<Record<string, PullSort>>;
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
  const { file, name, unit, date, standard } = options;
  const table = readTable(text, file);
  const rows = readRows(table.raws, orderTerms(unit, standard), table.columns);
  const whole = new Set(table.raws.map((raw) => raw.row));
  const unread = table.rows.filter((row) => !whole.has(row));
  // The column that seems to be missing may stand in a row that could not be read.
  const mayBeThere = ({ code, at }: Finding): boolean =>
    code === 'order/column-gap' && besideUnread(at.row ?? 0, table.raws, unread);
  const faulty = new Set(table.faultyRows);
  const findings = [
    ...checkDate(date, { file }),
    ...table.findings,
    ...rows.findings.filter((finding) => !mayBeThere(finding)),
  ].toSorted((a, b) => (a.at.row ?? 0) - (b.at.row ?? 0));
  const drawers = rows.value.filter((drawer) => !faulty.has(drawer.row));
  return { value: { name, ...defined({ date }), unit, drawers }, findings };
}

/** The terms of an order's cells under a shop standard. */
export const orderTerms = (unit: LengthUnit, standard: OrderVocabulary): OrderTerms => ({
  unit,
  styles: standard.styles.map((style) => style.name),
  cabinetKinds: Object.keys(standard.cabinetKinds),
  species: Object.keys(standard.species),
  pulls: standard.pulls,
});
