import { readFileSync } from 'node:fs';
import { fitOrder } from '../../../core/fit/fit-order.ts';
import type { DrawerFit } from '../../../core/fit/types.ts';
import { readOrderCsv } from '../../../core/order/read-csv.ts';
import type { Order } from '../../../core/order/types.ts';
import type { ShopStandard } from '../../../core/rules/types.ts';
import { readStandard } from '../../rules/read-standard.ts';

/** The fits of a demo order, without its jigs, which take longer. */
export function demoFits(name: 'harbor-library' | 'boathouse-frameless'): {
  readonly order: Order;
  readonly fits: readonly DrawerFit[];
  readonly standard: ShopStandard;
} {
  const frameless = name === 'boathouse-frameless';
  const standard = readStandard(frameless ? 'frameless-undermount.json' : 'face-frame-undermount.json');
  const file = `${name}.csv`;
  const text = readFileSync(new URL(`../../../assets/orders/${file}`, import.meta.url), 'utf8');
  const unit = frameless ? 'mm' : 'in';
  const { value: order } = readOrderCsv(text, { file, name, date: '2026-12-01', unit, standard });
  return { order, fits: fitOrder(order, standard).value, standard };
}
