import type { Finding, Outcome } from '../findings/finding.ts';
import { hasErrors } from '../findings/make.ts';
import { checkCabinet } from './check-cabinet.ts';
import type { OrderColumn } from './columns.ts';
import { groupCabinets } from './group-cabinets.ts';
import type { OrderTerms, RawRow } from './raw-row.ts';
import { readRow } from './read-row.ts';
import { stackRows } from './stack-rows.ts';
import type { Drawer } from './types.ts';

/**
 * Reads the rows of an order, from a CSV or a project file, whose columns are given: the value holds the
 * drawers of the rows that are right, the findings hold every fault of every row, in the order of the rows.
 */
export function readRows(
  raws: readonly RawRow[],
  terms: OrderTerms,
  columns: readonly OrderColumn[],
): Outcome<readonly Drawer[]> {
  const found = new Map<RawRow, Finding[]>(raws.map((raw) => [raw, []]));
  const rows = raws.map((raw) => {
    const { row, findings } = readRow(raw, terms, columns);
    found.get(raw)?.push(...findings);
    return row;
  });
  const cabinets = groupCabinets(rows);
  const stacks = cabinets.value.map(stackRows);
  const overRows = [
    ...cabinets.findings,
    ...cabinets.value.flatMap(checkCabinet),
    ...stacks.flatMap((stack) => stack.findings),
  ];
  for (const { raw, finding } of overRows) found.get(raw)?.push(finding);

  const places = new Map(stacks.flatMap((stack) => stack.places));
  const value: Drawer[] = [];
  for (const row of rows) {
    const place = places.get(row);
    const right = row.drawer !== undefined && !hasErrors(found.get(row.raw) ?? []);
    if (right && place !== undefined) value.push({ ...row.drawer, ...place });
  }
  return { value, findings: [...found.values()].flat() };
}
