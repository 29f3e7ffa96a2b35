import { createContext } from 'react';
import type { MachineProfile } from '../../core/machine/profile.ts';
import type { Draft } from '../../core/project/draft.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import type { FitComparison } from '../../core/session/compare-fits.ts';
import type { MachineComparison } from '../../core/session/compare-machines.ts';

/** Who works out what an edit would do to a draft; null when that failed. */
export interface Comparer {
  readonly standard: (draft: Draft, standard: ShopStandard) => Promise<FitComparison | null>;
  readonly machine: (draft: Draft, machine: MachineProfile) => Promise<MachineComparison | null>;
}

const inPlace = async (): Promise<Comparer> => (await import('./compare-in-place.ts')).COMPARE_IN_PLACE;

/** For where there is no worker; what it takes is fetched only there. */
const IN_PLACE: Comparer = {
  standard: async (draft, standard) => (await inPlace()).standard(draft, standard),
  machine: async (draft, machine) => (await inPlace()).machine(draft, machine),
};

/** The comparer of a page; the program gives it that of its worker. */
export const ComparerContext = createContext<Comparer>(IN_PLACE);
