import { EDGES, type Edge } from '../../../order/types.ts';
import { SAME_OVERHANG, sameLength } from '../../../units/tolerances.ts';
import type { SetupMember } from './types.ts';

/** The edges at which all drawers of a setup have the same overhang; the top may differ where no jig sets it. */
export const sharedOverhangs = (members: readonly SetupMember[]): readonly Edge[] => {
  const [first] = members;
  return EDGES.filter((edge) =>
    members.every(
      ({ fit }) =>
        first !== undefined && sameLength(fit.overhang[edge], first.fit.overhang[edge], SAME_OVERHANG),
    ),
  );
};
