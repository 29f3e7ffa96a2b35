import type { Outcome, Place } from '../findings/finding.ts';
import { hasErrors } from '../findings/make.ts';
import { checkFormat } from '../order/check-format.ts';
import { ORDER_COLUMNS, type OrderColumn } from '../order/columns.ts';
import { checkDate } from '../order/date.ts';
import { defined } from '../order/defined.ts';
import { fieldFindings } from '../order/field-findings.ts';
import type { RawRow } from '../order/raw-row.ts';
import { orderTerms } from '../order/read-csv.ts';
import { readRows } from '../order/read-rows.ts';
import { parseStandard } from '../rules/parse-standard.ts';
import { PROJECT_FORMAT, PROJECT_VERSION, projectSchema, type DrawerDocument } from './project-schema.ts';
import type { Project } from './types.ts';

const FORMAT = {
  format: PROJECT_FORMAT,
  version: PROJECT_VERSION,
  what: 'project file',
  code: 'project',
} as const;

/** Reads a project from its JSON document; the value is null when there is any error. */
export function parseProject(json: unknown, file: string): Outcome<Project | null> {
  const format = checkFormat(json, FORMAT, { file });
  if (format !== undefined) return { value: null, findings: [format] };
  const read = projectSchema.safeParse(json);
  if (!read.success) {
    return { value: null, findings: fieldFindings(read.error.issues, json, 'project/field', { file }) };
  }
  const { order } = read.data;
  const dated = checkDate(order.date, { file, field: 'order.date' });
  const standard = parseStandard(read.data.standard, file, ['standard']);
  // Without a standard nobody knows the styles and kinds that the rows may name.
  if (standard.value === null) return { value: null, findings: [...dated, ...standard.findings] };
  const raws = order.drawers.map((drawer, index) => rawFromDocument(drawer, index, file));
  const rows = readRows(raws, orderTerms(order.unit, standard.value), ORDER_COLUMNS);
  const findings = [...dated, ...standard.findings, ...rows.findings];
  if (hasErrors(findings)) return { value: null, findings };
  const value = {
    order: { name: order.name, ...defined({ date: order.date }), unit: order.unit, drawers: rows.value },
    standard: standard.value,
  };
  return { value, findings };
}

function rawFromDocument(drawer: DrawerDocument, index: number, file: string): RawRow {
  const cells: Partial<Record<OrderColumn, string>> = {};
  for (const column of ORDER_COLUMNS) {
    const text = drawer[column]?.trim() ?? '';
    if (text !== '') cells[column] = text;
  }
  const named =
    cells.cabinet === undefined || cells.drawer === undefined
      ? {}
      : { drawer: `${cells.cabinet} / ${cells.drawer}` };
  const at = (column: OrderColumn): Place => ({ file, field: `order.drawers.${index}.${column}`, ...named });
  return { row: drawer.row ?? 0, cells, at };
}
