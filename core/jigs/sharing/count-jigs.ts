import { PLAN_KINDS } from '../plan-kinds.ts';
import type { PlanKinds } from '../plan-types.ts';
import { planJigs } from '../plan.ts';
import type { Jig, JigKind } from '../types.ts';
import type { SharingOf } from './types.ts';

/** How many jigs an order takes when each distinct overhang has its own; planned, none is built. */
export function countJigs(
  { fits, registration, context }: SharingOf,
  { bottomFence, sideSpacer, stepProfile, cornerFence }: PlanKinds = PLAN_KINDS,
): number {
  const kinds: PlanKinds = {
    bottomFence: unbuilt(bottomFence),
    sideSpacer: unbuilt(sideSpacer),
    stepProfile: unbuilt(stepProfile),
    cornerFence: unbuilt(cornerFence),
  };
  return planJigs(fits, registration, context, kinds).value.jigs.length;
}

const unbuilt = (kind: JigKind): JigKind => ({
  ...kind,
  build: (id): Jig => ({
    id,
    kind: kind.name,
    hand: null,
    parameters: {},
    pieces: [],
    pins: [],
    seats: [],
    sensitivity: { kerf: 0, sheetThickness: 0, why: '' },
  }),
});
