import { keepSame, sameData } from '../collections/same-data.ts';
import type { Outcome } from '../findings/finding.ts';
import { cornerDrillGuide } from '../jigs/aids/corner-drill-guide.ts';
import { pullTemplate } from '../jigs/aids/pull-template.ts';
import type { AidKind } from '../jigs/aids/types.ts';
import { planOrder, type OrderPlan, type PlanOf } from '../jigs/plan-order.ts';
import { PLAN_KINDS } from '../jigs/plan-kinds.ts';
import type { BuildContext, Jig } from '../jigs/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { engravedWords } from '../order/engraved-words.ts';
import type { Order } from '../order/types.ts';
import { keyedMemo } from './keyed-memo.ts';

/** Plans jigs, again and again: jigs of the same id whose set-ups are still the same are kept. */
export interface JigMaker {
  readonly plan: (of: PlanOf, order: Order, machine: MachineProfile) => Outcome<OrderPlan>;
  readonly contextOf: (order: Order, machine: MachineProfile) => BuildContext;
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
    cornerDrillGuide: keepJigs(cornerDrillGuide),
    pullTemplate: keepJigs(pullTemplate),
  };
  const contextOf = ({ unit, name, date }: Order, machine: MachineProfile): BuildContext =>
    contexts.get('context', machine, unit, name, date);
  return {
    contextOf,
    plan: (of, order, machine) =>
      planOrder(of, contextOf(order, machine), {
        jigs: {
          bottomFence: kept.bottomFence.kind,
          sideSpacer: kept.sideSpacer.kind,
          stepProfile: kept.stepProfile.kind,
          cornerFence: kept.cornerFence.kind,
        },
        aids: { cornerDrillGuide: kept.cornerDrillGuide.kind, pullTemplate: kept.pullTemplate.kind },
      }),
    endRound() {
      contexts.endRound();
      for (const one of Object.values(kept)) one.endRound();
    },
  };
}

/**
 * A kind that builds and refuses what it has not seen in this or the last round; of jigs, whose set-ups are
 * lists, and of aids alike.
 */
function keepJigs<Needs, Kind extends Pick<AidKind<Needs>, 'build' | 'refuses'>>(
  kind: Kind & Pick<AidKind<Needs>, 'build' | 'refuses'>,
): { readonly kind: Kind; readonly endRound: () => void } {
  const built = keyedMemo<string, [string, Needs, BuildContext], Jig>(kind.build, {
    same: ([, setups, context], [, later, now]) => context === now && sameData(setups, later),
    keep: keepSame,
  });
  const refused = keyedMemo<string, [Needs, BuildContext], string | null>(kind.refuses, {
    same: ([setups, context], [later, now]) => context === now && sameData(setups, later),
  });
  return {
    kind: {
      ...kind,
      build: (id: string, setups: Needs, context: BuildContext) => built.get(id, id, setups, context),
      // The text only finds set-ups again: infinite numbers are all one to it.
      refuses: (setups: Needs, context: BuildContext) => refused.get(JSON.stringify(setups), setups, context),
    },
    endRound() {
      built.endRound();
      refused.endRound();
    },
  };
}
