import type { DrawerFit } from '../fit/types.ts';

/** All of a fit that its fastening depends on, as a text: fits with the same key are fastened alike. */
export const fasteningKey = (fit: DrawerFit): string =>
  JSON.stringify([
    fit.unit,
    fit.overhang.left,
    fit.overhang.right,
    fit.overhang.bottom,
    fit.frontW,
    fit.frontH,
    fit.frontThickness,
    fit.boxW,
    fit.boxH,
    fit.boxSide,
    fit.boxFront,
    fit.rules.backBevel.value,
    fit.drawer.front,
    fit.drawer.boxD ?? null,
    fit.drawer.species ?? null,
    fit.drawer.pullChoice ?? null,
  ]);
