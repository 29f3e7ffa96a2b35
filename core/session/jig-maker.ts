import { keepSame, sameData } from '../collections/same-data.ts';
import type { Outcome } from '../findings/finding.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { JigPlan, Registration } from '../jigs/plan-types.ts';
import { PLAN_KINDS, planJigs } from '../jigs/plan.ts';
import type { BuildContext, Jig, JigKind, Setup } from '../jigs/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { engravedWords } from '../order/engraved-words.ts';
import type { Order } from '../order/types.ts';
import { keyedMemo } from './keyed-memo.ts';

/** Plans jigs, again and again: jigs of the same id whose set-ups are still the same are kept. */
export interface JigMaker {
  readonly plan: (
    fits: readonly DrawerFit[],
    registration: Registration,
    order: Order,
    machine: MachineProfile,
  ) => Outcome<JigPlan>;
  readonly endRound: () => void;
}

export function jigMaker(): JigMaker {
  const contexts = keyedMemo<
    'context',
    [MachineProfile, Order['unit'], string, string | undefined],
    BuildContext
  >((machine, unit, name, date) => ({ machine, unit, order: engravedWords({ name, date }) }));
  const kept = {
    bottomFence: keepJigs(PLAN_KINDS.bottomFence),
    sideSpacer: keepJigs(PLAN_KINDS.sideSpacer),
    stepProfile: keepJigs(PLAN_KINDS.stepProfile),
    cornerFence: keepJigs(PLAN_KINDS.cornerFence),
  };
  return {
    plan: (fits, registration, { unit, name, date }, machine) =>
      planJigs(fits, registration, contexts.get('context', machine, unit, name, date), {
        bottomFence: kept.bottomFence.kind,
        sideSpacer: kept.sideSpacer.kind,
        stepProfile: kept.stepProfile.kind,
        cornerFence: kept.cornerFence.kind,
      }),
    endRound() {
      contexts.endRound();
      for (const one of Object.values(kept)) one.endRound();
    },
  };
}

/** A kind that builds and refuses what it has not seen in this or the last round. */
function keepJigs(kind: JigKind): { readonly kind: JigKind; readonly endRound: () => void } {
  const built = keyedMemo<string, [string, readonly Setup[], BuildContext], Jig>(kind.build, {
    same: ([, setups, context], [, later, now]) => context === now && sameData(setups, later),
    keep: keepSame,
  });
  const refused = keyedMemo<string, [readonly Setup[], BuildContext], string | null>(kind.refuses, {
    same: ([setups, context], [later, now]) => context === now && sameData(setups, later),
  });
  return {
    kind: {
      ...kind,
      build: (id, setups, context) => built.get(id, id, setups, context),
      // The text only finds set-ups again: infinite numbers are all one to it.
      refuses: (setups, context) => refused.get(JSON.stringify(setups), setups, context),
    },
    endRound() {
      built.endRound();
      refused.endRound();
    },
  };
}
