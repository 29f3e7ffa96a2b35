import type { RegisteredSide } from '../../fit/budget/start-move.ts';
import type { DrawerFit } from '../../fit/types.ts';

/** How far a jig's overhangs lie from those that a drawer wants: got less wanted, mm. */
export interface Deviation {
  readonly side: number;
  readonly bottom: number;
}

/**
 * A drawer whose front is hung by jigs that are off by so much, as its budget sees it: the box stands on another
 * place of the same front, and the height adjuster has so much more to raise before the gaps are as predicted.
 */
export function shiftFit(fit: DrawerFit, registered: RegisteredSide, { side, bottom }: Deviation): DrawerFit {
  const { overhang, rules } = fit;
  const other = registered === 'left' ? 'right' : 'left';
  return {
    ...fit,
    overhang: {
      ...overhang,
      [registered]: overhang[registered] + side,
      [other]: overhang[other] - side,
      bottom: overhang.bottom + bottom,
      top: overhang.top - bottom,
    },
    rules: { ...rules, startLow: { ...rules.startLow, value: rules.startLow.value + bottom } },
  };
}
