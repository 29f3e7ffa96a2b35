import type { Drawer } from '../order/types.ts';

/** A drawer's name for people: `Reading room / B2 / top`. */
export const drawerName = (drawer: Drawer): string =>
  [drawer.room, drawer.cabinet, drawer.drawer]
    .filter((part) => part !== undefined && part !== '')
    .join(' / ');
