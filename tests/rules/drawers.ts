import type { Drawer } from '../../core/order/types.ts';

/** A drawer alone in its cabinet, but for what is given. */
export const drawer = (given: Partial<Drawer> = {}): Drawer => ({
  row: 2,
  cabinet: 'B1',
  column: 1,
  position: 'bottom',
  first: true,
  last: true,
  drawer: 'one',
  qty: 1,
  style: 'inset',
  openingW: 400,
  openingH: 150,
  edges: {},
  front: { kind: 'slab' },
  ...given,
});
