import type { DrawerFit } from './types.ts';

/** Whether there is a box and a front at all; a fit without has an error that says so. */
export const canHang = ({ boxW, boxH, frontW, frontH }: DrawerFit): boolean =>
  Math.min(boxW, boxH, frontW, frontH) > 0;
