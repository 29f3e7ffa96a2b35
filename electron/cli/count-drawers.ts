import type { Order } from '../../core/order/types.ts';

/** How many drawers an order has; a line stands for as many as its quantity says. */
export const countDrawers = ({ drawers }: Pick<Order, 'drawers'>): number =>
  drawers.reduce((sum, { qty }) => sum + qty, 0);
