import { keepSame } from '../collections/same-data.ts';
import type { Finding, Outcome } from '../findings/finding.ts';
import { fitOrder, PLAIN_FIT } from '../fit/fit-order.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Drawer, LengthUnit, Order } from '../order/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { keyedMemo } from './keyed-memo.ts';

/** Fits orders, again and again: drawers and cabinets that are still the same are not fitted anew. */
export interface Fitter {
  readonly fit: (order: Order, standard: ShopStandard) => Outcome<readonly DrawerFit[]>;
  readonly endRound: () => void;
}

export function fitter(): Fitter {
  const fits = keyedMemo<number, [Drawer, ShopStandard, number, LengthUnit], Outcome<DrawerFit | null>>(
    PLAIN_FIT.fitOne,
    { keep: (before, after) => ({ ...after, value: keepSame(before.value, after.value) }) },
  );
  const cabinets = keyedMemo<DrawerFit | undefined, [number, ...DrawerFit[]], readonly Finding[]>(
    (smallestGap, ...own) => PLAIN_FIT.checkCabinet(own, smallestGap),
  );
  return {
    fit: (order, standard) =>
      fitOrder(order, standard, {
        fitOne: (drawer, rules, columns, unit) => fits.get(drawer.row, drawer, rules, columns, unit),
        checkCabinet: (own, smallestGap) => cabinets.get(own[0], smallestGap, ...own),
      }),
    endRound() {
      fits.endRound();
      cabinets.endRound();
    },
  };
}
