import { groupBy } from '../collections/group-by.ts';
import type { DrawerFit } from '../fit/types.ts';
import { cornerFence } from './kinds/corner-fence.ts';
import type { JigUse } from './plan-types.ts';
import { jigKeys, setupOf } from './requirements.ts';
import { strictest } from './setups.ts';
import type { BuildContext, Jig } from './types.ts';

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
export function planCornerJigs(fits: readonly DrawerFit[], context: BuildContext): CornerJigs {
  const corners = fits.flatMap((fit) =>
    HANDS.map((hand) => ({ fit, hand, bottom: setupOf(fit, 'bottom'), side: setupOf(fit, hand) })),
  );
  const jigKey = jigKeys(corners.flatMap(({ bottom, side }) => [bottom, side]));
  const groups = groupBy(corners, ({ hand, bottom, side }) => `${hand} ${jigKey(bottom)} ${jigKey(side)}`);
  const fences = [...groups.values()].flatMap((uses) => {
    const [first] = uses;
    if (first === undefined) return [];
    const setups = [strictest(uses.map(({ bottom }) => bottom)), strictest(uses.map(({ side }) => side))];
    return [{ ...first, setups, uses, refused: cornerFence.refuses(setups, context) !== null }];
  });
  // A drawer that has no fence at one of its corners gets edge jigs, so that it is set in one way only.
  const left = new Set(
    fences.filter(({ refused }) => refused).flatMap(({ uses }) => uses.map(({ fit }) => fit)),
  );
  const built = fences
    .map((fence) => ({ ...fence, uses: fence.uses.filter(({ fit }) => !left.has(fit)) }))
    .filter(({ uses }) => uses.length > 0)
    .toSorted((a, b) => a.bottom.overhang - b.bottom.overhang || a.side.overhang - b.side.overhang);

  const numbers = new Map<string, number>();
  const jigs: Jig[] = [];
  const uses: JigUse[] = [];
  for (const { hand, bottom, side, setups, uses: corner } of built) {
    const pair = `${jigKey(bottom)} ${jigKey(side)}`;
    const number = numbers.get(pair) ?? numbers.size + 1;
    numbers.set(pair, number);
    const jig = cornerFence.build(
      `${cornerFence.code}${number}${hand === 'left' ? 'L' : 'R'}`,
      setups,
      context,
    );
    jigs.push(jig);
    for (const { fit } of corner) {
      uses.push({ fit, edge: 'bottom', jig, overhang: fit.overhang.bottom });
      uses.push({ fit, edge: hand, jig, overhang: fit.overhang[hand] });
    }
  }
  return { jigs, uses, left: fits.filter((fit) => left.has(fit)) };
}
