import type { DrawerFit } from '../fit/types.ts';
import type { ShopStandard } from '../rules/types.ts';

/** Keeps what a drawer comes to by itself under one standard, as long as there is the very same drawer. */
export function perDrawer<R extends object>(
  compute: (fit: DrawerFit, standard: ShopStandard) => R,
): (fit: DrawerFit, standard: ShopStandard) => R {
  let known = new WeakMap<DrawerFit, R>();
  let under: ShopStandard | undefined;
  return (fit, standard) => {
    if (standard !== under) [known, under] = [new WeakMap(), standard];
    const before = known.get(fit);
    if (before !== undefined) return before;
    const result = compute(fit, standard);
    known.set(fit, result);
    return result;
  };
}
