import type { Outcome, Place } from '../findings/finding.ts';
import { hasErrors } from '../findings/make.ts';
import { ORDER_COLUMNS, type OrderColumn } from '../order/columns.ts';
import { checkDate } from '../order/date.ts';
import { defined } from '../order/defined.ts';
import type { RawRow } from '../order/raw-row.ts';
import { orderTerms } from '../order/read-csv.ts';
import { readRows } from '../order/read-rows.ts';
import { projectSchema } from './project-schema.ts';
import { readDocument, type DocumentRow } from './read-document.ts';
import type { Project } from './types.ts';

/** Reads a project from its JSON document; the value is null when there is any error. */
export function parseProject(json: unknown, file: string): Outcome<Project | null> {
  const read = readDocument(json, file, projectSchema, ({ date }) =>
    checkDate(date, { file, field: 'order.date' }),
  );
  // Without a standard nobody knows the styles and kinds that the rows may name.
  if (read.value === null) return { value: null, findings: read.findings };
  const { order, standard, machine, registration, sharing } = read.value;
  const raws = read.value.rows.map((row, index) => rawFromDocument(row, index, file));
  const rows = readRows(raws, orderTerms(order.unit, standard), ORDER_COLUMNS);
  const findings = [...read.findings, ...rows.findings];
  if (hasErrors(findings)) return { value: null, findings };
  const value = {
    order: { ...order, drawers: rows.value },
    standard,
    ...defined({ machine, registration, sharing }),
  };
  return { value, findings };
}

function rawFromDocument({ row, cells }: DocumentRow, index: number, file: string): RawRow {
  const named =
    cells.cabinet === undefined || cells.drawer === undefined
      ? {}
      : { drawer: `${cells.cabinet} / ${cells.drawer}` };
  const at = (column: OrderColumn): Place => ({ file, field: `order.drawers.${index}.${column}`, ...named });
  return { row, cells, at };
}
