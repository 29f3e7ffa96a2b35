import Papa from 'papaparse';
import { ORDER_COLUMNS, REQUIRED_COLUMNS } from './columns.ts';
import { drawerCells } from './drawer-cells.ts';
import type { Order } from './types.ts';

/**
 * Writes the drawers of an order as CSV text (RFC 4180, commas, CRLF) that `readOrderCsv` reads back the
 * same but for `row`, which becomes the row of this file. Columns that no drawer uses are left out. The
 * order's name and date stand outside the file; lengths carry their unit, so no unit is needed to read it.
 */
export function writeOrderCsv(order: Order): string {
  const rows = order.drawers.map((drawer) => drawerCells(drawer, order.unit));
  const columns = ORDER_COLUMNS.filter(
    (column) => REQUIRED_COLUMNS.includes(column) || rows.some((row) => row[column] !== undefined),
  );
  const data = rows.map((row) => columns.map((column) => row[column] ?? ''));
  return `${Papa.unparse([columns, ...data], { newline: '\r\n' })}\r\n`;
}
