import { SAME_LENGTH, roundTo } from '../../units/tolerances.ts';
import type { DrawerFit } from '../../fit/types.ts';
import type { SharedJig, SharedPlace, Sharing } from './types.ts';

/** A setting of a shared jig with its drawers. */
export interface SharedNeed {
  readonly overhangs: readonly number[];
  readonly fits: readonly DrawerFit[];
}

/** The jigs that are shared at a place, each by its settings. */
export type SharedNeeds = (place: SharedPlace) => readonly (readonly SharedNeed[])[];

/** A sharing with the drawers themselves, which must be those that it was made for, in the same order. */
export function sharedNeeds(sharing: Sharing | undefined, fits: readonly DrawerFit[]): SharedNeeds {
  const own = (jig: SharedJig): readonly SharedNeed[] =>
    jig.settings.map(({ overhangs, lines }) => ({
      overhangs,
      fits: lines.map((line) => {
        const fit = fits[line];
        if (fit === undefined) throw new RangeError(`sharedNeeds: the order has no drawer ${line}`);
        return fit;
      }),
    }));
  return (place) => (sharing?.jigs ?? []).filter((jig) => jig.place === place).map(own);
}

/** mm. What a jig leaves to the adjuster: the overhang wanted less the one got. */
export const adjustmentOf = (wanted: number, got: number): number => roundTo(wanted - got, DECIMALS);

/** Of nanometres: what is less is float noise. */
const DECIMALS = Math.round(-Math.log10(SAME_LENGTH));
