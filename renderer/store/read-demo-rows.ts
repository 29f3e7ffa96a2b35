import { readTable } from '../../core/order/read-table.ts';
import { draftRows } from '../../core/project/draft-rows.ts';
import type { DraftRow } from '../../core/project/draft.ts';

/** The rows of the demo order's table. What comes with the program is right. */
export function readDemoRows(csv: string): readonly DraftRow[] {
  const { raws, findings } = readTable(csv, 'harbor-library.csv');
  if (findings.length > 0) throw new Error(findings.map(({ message }) => message).join(' '));
  return draftRows(raws.map(({ cells }) => cells));
}
