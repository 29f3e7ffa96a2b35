import type { DrawerFit } from '../fit/types.ts';

/** Fits do not change, so their keys are kept with them. */
const keys = new WeakMap<DrawerFit, string>();

/** All of a fit that its fastening depends on, as a text: fits with the same key are fastened alike. */
export function fasteningKey(fit: DrawerFit): string {
  const known = keys.get(fit);
  if (known !== undefined) return known;
  const key = JSON.stringify([
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
  keys.set(fit, key);
  return key;
}
