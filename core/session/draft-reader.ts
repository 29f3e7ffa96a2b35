import { sameData } from '../collections/same-data.ts';
import type { Finding, Outcome, Place } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import { ORDER_COLUMNS, type OrderColumn } from '../order/columns.ts';
import { checkDate } from '../order/date.ts';
import { defined } from '../order/defined.ts';
import { checkName } from '../order/order-name.ts';
import type { OrderTerms, RawRow } from '../order/raw-row.ts';
import { orderTerms } from '../order/read-csv.ts';
import { joinRows, PLAIN_JOIN, type CabinetReading, type RowReading } from '../order/read-rows.ts';
import { readRow, type LooseDrawer, type ReadRow } from '../order/read-row.ts';
import type { StackPlace } from '../order/stack-rows.ts';
import type { Drawer, Order } from '../order/types.ts';
import type { Draft, DraftRow } from '../project/draft.ts';
import { keyedMemo } from './keyed-memo.ts';

/** Reads a draft's order, again and again: what is said of rows that are still the same is kept. */
export interface DraftReader {
  readonly read: (draft: Draft) => Outcome<Order>;
  readonly endRound: () => void;
}

/** A reader that remembers the last draft. The row of a drawer is its place in the draft, from 1. */
export function draftReader(): DraftReader {
  const terms = keyedMemo<'terms', Parameters<typeof orderTerms>, OrderTerms>(orderTerms);
  const rows = keyedMemo<string, [number, DraftRow['cells'], OrderTerms], RowReading>(
    (number, cells, known) => readRow(rawFromCells(number, cells), known, ORDER_COLUMNS),
    { keep: keepDrawer },
  );
  const cabinets = keyedMemo<ReadRow | undefined, ReadRow[], CabinetReading>((...own) =>
    PLAIN_JOIN.readCabinet(own),
  );
  const drawers = keyedMemo<
    LooseDrawer,
    [LooseDrawer, StackPlace['position'], StackPlace['first'], StackPlace['last']],
    Drawer
  >((drawer, position, first, last) => PLAIN_JOIN.placeDrawer(drawer, { position, first, last }));
  const heads = keyedMemo<'head', [string, string | undefined], readonly Finding[]>((name, date) => [
    ...checkName(name, { field: 'name' }),
    ...checkDate(date, { field: 'date' }),
  ]);
  const memos = [terms, rows, cabinets, drawers, heads];

  return {
    read({ name, date, unit, rows: own, standard }) {
      const known = terms.get('terms', unit, standard);
      const readings = own.map(({ id, cells }, index) => rows.get(id, index + 1, cells, known));
      const joined = joinRows(readings, {
        readCabinet: (ofCabinet) => cabinets.get(ofCabinet[0], ...ofCabinet),
        placeDrawer: (drawer, { position, first, last }) =>
          drawers.get(drawer, drawer, position, first, last),
      });
      const empty = own.length === 0 ? [NO_ROWS] : [];
      return {
        value: { name, ...defined({ date }), unit, drawers: joined.value },
        findings: [...heads.get('head', name, date), ...empty, ...joined.findings],
      };
    },
    endRound() {
      for (const memo of memos) memo.endRound();
    },
  };
}

const NO_ROWS = error('order/no-rows', 'The order has no drawers; add a row for each.', {});

/** A cell may be written in another way and mean the same drawer. */
function keepDrawer(before: RowReading, after: RowReading): RowReading {
  const { drawer } = after.row;
  if (drawer === undefined || !sameData(before.row.drawer, drawer)) return after;
  return { ...after, row: { ...after.row, drawer: before.row.drawer ?? drawer } };
}

function rawFromCells(row: number, cells: DraftRow['cells']): RawRow {
  const named =
    cells.cabinet === undefined || cells.drawer === undefined
      ? {}
      : { drawer: `${cells.cabinet} / ${cells.drawer}` };
  const at = (column: OrderColumn): Place => ({ row, column, ...named });
  return { row, cells, at };
}
