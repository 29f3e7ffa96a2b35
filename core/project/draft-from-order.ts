import { defined } from '../order/defined.ts';
import { drawerCells } from '../order/drawer-cells.ts';
import type { Order } from '../order/types.ts';
import { draftRows } from './draft-rows.ts';
import type { Draft } from './draft.ts';

/** What a draft has besides its order. */
export type DraftSurroundings = Pick<Draft, 'standard' | 'machine' | 'registration'> &
  Partial<Pick<Draft, 'sharing'>>;

/** A draft of an order that has been read, its cells written out as the order's own words. */
export function draftFromOrder(order: Order, around: DraftSurroundings): Draft {
  const { name, date, unit, drawers } = order;
  const { standard, machine, registration, sharing = 'each' } = around;
  const rows = draftRows(drawers.map((drawer) => drawerCells(drawer, unit)));
  return { name, ...defined({ date }), unit, rows, standard, machine, registration, sharing };
}
