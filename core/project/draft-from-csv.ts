import type { Outcome } from '../findings/finding.ts';
import { defined } from '../order/defined.ts';
import { readTable } from '../order/read-table.ts';
import type { DraftSurroundings } from './draft-from-order.ts';
import { draftRows } from './draft-rows.ts';
import type { Draft } from './draft.ts';

export interface DraftCsvOptions extends DraftSurroundings, Pick<Draft, 'name' | 'date' | 'unit'> {
  /** Name of the file, for findings. */
  readonly file: string;
}

/**
 * A draft of the rows of a CSV file, every cell as it is written: the session tells what is wrong with
 * them. Findings are those of the file itself, with its rows: header, quotation marks, number of cells. A row
 * whose cells nobody can put under their columns is left out, and told.
 */
export function draftFromCsv(text: string, options: DraftCsvOptions): Outcome<Draft> {
  const { file, name, date, unit, standard, machine, registration, sharing = 'each' } = options;
  const { raws, findings } = readTable(text, file);
  const rows = draftRows(raws.map(({ cells }) => cells));
  return {
    value: { name, ...defined({ date }), unit, rows, standard, machine, registration, sharing },
    findings,
  };
}
