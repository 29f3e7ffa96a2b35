import type { Order } from '../../order/types.ts';

/** An order as sheets name it: `harbor-library, 2026-12-01`. */
export const orderText = ({ name, date }: Pick<Order, 'name' | 'date'>): string =>
  date === undefined ? name : `${name}, ${date}`;
