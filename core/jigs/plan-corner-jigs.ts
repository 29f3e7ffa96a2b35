import { groupBy } from '../collections/group-by.ts';
import type { DrawerFit } from '../fit/types.ts';
import { SAME_OVERHANG, sameLength } from '../units/tolerances.ts';
import type { PlanKinds } from './plan-types.ts';
import { jigKeys, setupOf } from './requirements.ts';
import type { SharedNeeds } from './sharing/shared-needs.ts';
import { strictest } from './setups.ts';
import type { BuildContext, Jig, Setup } from './types.ts';
import type { UseList } from './use-list.ts';

interface CornerJigs {
  readonly jigs: readonly Jig[];
  /** Drawers whose corners no fence can serve; they get edge jigs. */
  readonly left: readonly DrawerFit[];
}

const HANDS = ['left', 'right'] as const;

/**
 * Handed corner fences for drawers at both of their lower corners: one fence for each distinct pair of bottom
 * and side overhang on a hand, or those that drawers share. The two hands of a pair have the same number. Their
 * uses go to the list.
 */
export function planCornerJigs(
  fits: readonly DrawerFit[],
  context: BuildContext,
  kinds: PlanKinds,
  shared: SharedNeeds,
  uses: UseList,
): CornerJigs {
  const { cornerFence } = kinds;
  const refused = refusedCorners(fits, context, kinds);
  const overhangs = new Map(HANDS.map((hand) => [hand, sharedOverhangs(shared(`${hand} corner`))]));
  const corners = fits
    .filter((fit) => !refused.has(fit))
    .flatMap((fit) => HANDS.map((hand) => cornerOf(fit, hand, overhangs.get(hand)?.get(fit))));
  const jigKey = jigKeys(corners.flatMap(({ bottom, side }) => [bottom, side]));
  const groups = groupBy(corners, ({ hand, bottom, side }) => `${hand} ${jigKey(bottom)} ${jigKey(side)}`);
  const built = [...groups.values()]
    .flatMap((uses) => {
      const [first] = uses;
      if (first === undefined) return [];
      const setups = [strictest(uses.map(({ bottom }) => bottom)), strictest(uses.map(({ side }) => side))];
      return [{ ...first, setups, uses }];
    })
    .toSorted(
      (a, b) =>
        compare(a.bottom, b.bottom) ||
        compare(a.side, b.side) ||
        HANDS.indexOf(a.hand) - HANDS.indexOf(b.hand),
    );

  const numbers = new Map<string, number>();
  const jigs: Jig[] = [];
  for (const { hand, bottom, side, setups, uses: served } of built) {
    const pair = `${jigKey(bottom)} ${jigKey(side)}`;
    const number = numbers.get(pair) ?? numbers.size + 1;
    numbers.set(pair, number);
    const jig = cornerFence.build(
      `${cornerFence.code}${number}${hand === 'left' ? 'L' : 'R'}`,
      setups,
      context,
    );
    jigs.push(jig);
    for (const { fit } of served) {
      const [low, wide] = overhangs.get(hand)?.get(fit) ?? [];
      uses.add(fit, 'bottom', jig, low ?? fit.overhang.bottom);
      uses.add(fit, hand, jig, wide ?? fit.overhang[hand]);
    }
  }
  return { jigs, left: fits.filter((fit) => refused.has(fit)) };
}

/** A corner of a drawer; one that shares a fence is as if it wanted the fence's overhangs. */
function cornerOf(fit: DrawerFit, hand: 'left' | 'right', [low, wide]: readonly number[] = []) {
  const [bottom, side] = [setupOf(fit, 'bottom'), setupOf(fit, hand)];
  return {
    fit,
    hand,
    bottom: { ...bottom, overhang: low ?? bottom.overhang },
    side: { ...side, overhang: wide ?? side.overhang },
  };
}

const sharedOverhangs = (jigs: ReturnType<SharedNeeds>): ReadonlyMap<DrawerFit, readonly number[]> =>
  new Map(
    jigs
      .flat()
      .flatMap(({ fits, overhangs }) => fits.map((fit): [DrawerFit, readonly number[]] => [fit, overhangs])),
  );

/** Drawers that have no fence at one of their corners; they get edge jigs, so that each is set in one way only. */
export const refusedCorners = (
  fits: readonly DrawerFit[],
  context: BuildContext,
  { cornerFence }: PlanKinds,
): ReadonlySet<DrawerFit> =>
  new Set(
    fits.filter((fit) =>
      HANDS.some((hand) => {
        const { bottom, side } = cornerOf(fit, hand);
        return cornerFence.refuses([bottom, side], context) !== null;
      }),
    ),
  );

/** By overhang, overhangs that differ by float noise only being equal. */
const compare = (a: Setup, b: Setup): number =>
  sameLength(a.overhang, b.overhang, SAME_OVERHANG) ? 0 : a.overhang - b.overhang;
