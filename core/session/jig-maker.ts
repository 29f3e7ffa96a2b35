import { keepSame, sameData } from '../collections/same-data.ts';
import type { Outcome } from '../findings/finding.ts';
import type { Fastening } from '../fastening/types.ts';
import { PLAN_AID_KINDS } from '../jigs/aids/plan-aids.ts';
import type { AidKind } from '../jigs/aids/types.ts';
import { planOrder, type OrderPlan, type PlanOf } from '../jigs/plan-order.ts';
import { PLAN_KINDS } from '../jigs/plan-kinds.ts';
import type { BuildContext, Jig } from '../jigs/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { engravedWords } from '../order/engraved-words.ts';
import type { Order } from '../order/types.ts';
import { keyedMemo, sameItems, type KeyedMemo } from './keyed-memo.ts';

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
    cornerDrillGuide: keepJigs(PLAN_AID_KINDS.cornerDrillGuide),
    pullTemplate: keepJigs(PLAN_AID_KINDS.pullTemplate),
  };
  // Drawers that are fastened alike have the very same places and holes.
  const corners = keepAlike(PLAN_AID_KINDS.guideNeeds);
  const pulls = keepAlike(PLAN_AID_KINDS.templateNeeds);
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
        aids: {
          cornerDrillGuide: kept.cornerDrillGuide.kind,
          pullTemplate: kept.pullTemplate.kind,
          guideNeeds: (fastening, standard, shop) => corners.get(fastening.places, fastening, standard, shop),
          templateNeeds: (fastening, standard, shop) =>
            pulls.get(fastening.pullHoles, fastening, standard, shop),
        },
      }),
    endRound() {
      for (const memo of [contexts, corners, pulls, ...Object.values(kept)]) memo.endRound();
    },
  };
}

/** What is asked of aids by drawers that are fastened alike, kept as long as standard and shop are the same. */
function keepAlike<Standard, Asked>(
  ask: (fastening: Fastening, standard: Standard, context: BuildContext) => Asked,
): KeyedMemo<object, [Fastening, Standard, BuildContext], Asked> {
  return keyedMemo(ask, { same: ([, ...before], [, ...after]) => sameItems(before, after) });
}

/**
 * A kind that builds and refuses what it has not seen in this or the last round; of jigs, whose set-ups are
 * lists, and of aids alike.
 */
function keepJigs<Needs extends object, Kind extends Builds<Needs>>(
  kind: Kind & Builds<Needs>,
): { readonly kind: Kind; readonly endRound: () => void } {
  const { builtFrom } = kind;
  const sameFrom = ([setups, shop]: ToBuild<Needs>, [later, now]: ToBuild<Needs>): boolean =>
    builtFrom !== undefined && sameNeeds([builtFrom(setups, shop), shop], [builtFrom(later, now), now]);
  const built = keyedMemo<string, ToBuild<Needs>, Jig>(
    (setups, context, id) => kind.build(id, setups, context),
    { same: (before, after) => sameNeeds(before, after) || sameFrom(before, after), keep: keepSame },
  );
  const refused = keyedMemo<string, [Needs, BuildContext], string | null>(kind.refuses, { same: sameNeeds });
  return {
    kind: {
      ...kind,
      build: (id: string, setups: Needs, context: BuildContext) => built.get(id, setups, context, id),
      refuses: (setups: Needs, context: BuildContext) => refused.get(textOf(setups), setups, context),
    },
    endRound() {
      built.endRound();
      refused.endRound();
    },
  };
}

type Builds<Needs> = Pick<AidKind<Needs>, 'build' | 'refuses' | 'builtFrom'>;

/** What is asked to be built, and its id. */
type ToBuild<Needs> = [Needs, BuildContext, string];

const sameNeeds = (
  [setups, context]: readonly [object, BuildContext, ...unknown[]],
  [later, now]: readonly [object, BuildContext, ...unknown[]],
): boolean => context === now && sameData(setups, later);

/** Set-ups do not change, so their texts are kept with them. */
const texts = new WeakMap<object, string>();

/** A text that finds set-ups again; infinite numbers are all one to it. */
function textOf(setups: object): string {
  if (Array.isArray(setups)) return setups.map(textOf).join(' ');
  const text = texts.get(setups) ?? JSON.stringify(setups);
  texts.set(setups, text);
  return text;
}
