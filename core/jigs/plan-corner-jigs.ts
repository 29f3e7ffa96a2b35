import { groupBy } from '../collections/group-by.ts';
import type { DrawerFit } from '../fit/types.ts';
import { SAME_OVERHANG, sameLength } from '../units/tolerances.ts';
import type { JigUse, PlanKinds } from './plan-types.ts';
import { jigKeys, setupOf } from './requirements.ts';
import { strictest } from './setups.ts';
import type { BuildContext, Jig, Setup } from './types.ts';

interface CornerJigs {
  readonly jigs: readonly Jig[];
  readonly uses: readonly JigUse[];
  /** Drawers whose corners no fence can serve; they get edge jigs. */
  readonly left: readonly DrawerFit[];
}

const HANDS = ['left', 'right'] as const;

/**
 * Handed corner fences for drawers at both of their lower corners: one fence for each distinct pair of bottom
 * and side overhang on a hand. The two hands of a pair have the same number.
 */
export function planCornerJigs(
  fits: readonly DrawerFit[],
  context: BuildContext,
  { cornerFence }: PlanKinds,
): CornerJigs {
  const corner = (fit: DrawerFit, hand: 'left' | 'right') => ({
    fit,
    hand,
    bottom: setupOf(fit, 'bottom'),
    side: setupOf(fit, hand),
  });
  // A drawer that has no fence at one of its corners gets edge jigs, so that it is set in one way only.
  const refused = new Set(
    fits.filter((fit) =>
      HANDS.some((hand) => {
        const { bottom, side } = corner(fit, hand);
        return cornerFence.refuses([bottom, side], context) !== null;
      }),
    ),
  );
  const corners = fits
    .filter((fit) => !refused.has(fit))
    .flatMap((fit) => HANDS.map((hand) => corner(fit, hand)));
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
  const uses: JigUse[] = [];
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
      uses.push({ fit, edge: 'bottom', jig, overhang: fit.overhang.bottom });
      uses.push({ fit, edge: hand, jig, overhang: fit.overhang[hand] });
    }
  }
  return { jigs, uses, left: fits.filter((fit) => refused.has(fit)) };
}

/** By overhang, overhangs that differ by float noise only being equal. */
const compare = (a: Setup, b: Setup): number =>
  sameLength(a.overhang, b.overhang, SAME_OVERHANG) ? 0 : a.overhang - b.overhang;
