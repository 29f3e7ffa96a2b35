import { groupBy } from '../collections/group-by.ts';
import type { Finding } from '../findings/finding.ts';
import { cabinetKey } from '../order/cabinets.ts';
import type { OrderColumn } from '../order/columns.ts';
import { stateOf } from './row-state.ts';
import type { RowState } from './types.ts';

/** A row of an order in work, as far as its cabinet goes. */
interface CabinetRow {
  readonly id: string;
  readonly cells: Readonly<Partial<Record<OrderColumn, string>>>;
}

/** A cabinet of an order in work, drawn or not. */
export interface CabinetEntry {
  /** As `cabinetKey` of its drawers. */
  readonly key: string;
  /** `Reading room / R2`; empty for rows that name no cabinet. */
  readonly name: string;
  readonly rowIds: readonly string[];
  /** The worst state of its rows. */
  readonly state: RowState;
  /** How many of its rows have a finding. */
  readonly attention: number;
}

/** The cabinets of an order in work in the order of their rows, rows with faults included. */
export function listCabinets(
  rows: readonly CabinetRow[],
  findings: readonly { readonly rowId: string | null; readonly finding: Pick<Finding, 'severity'> }[],
): readonly CabinetEntry[] {
  const found = groupBy(findings, ({ rowId }) => rowId);
  const groups = groupBy(rows, ({ cells }) =>
    cabinetKey({ cabinet: cells.cabinet ?? '', ...(cells.room === undefined ? {} : { room: cells.room }) }),
  );
  return [...groups].map(([key, own]) => {
    const states = own.map(({ id }) => stateOf(id, found.get(id) ?? []));
    const { room, cabinet } = own[0]?.cells ?? {};
    return {
      key,
      name: [room, cabinet].filter((word) => word !== undefined && word !== '').join(' / '),
      rowIds: own.map(({ id }) => id),
      state: (['error', 'warning'] as const).find((state) => states.includes(state)) ?? 'right',
      attention: states.filter((state) => state !== 'right').length,
    };
  });
}
