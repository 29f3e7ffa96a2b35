import type { CurvePoint } from '../cover/types.ts';
import type { JigStudy } from './study-jigs.ts';
import type { JigSharing } from './types.ts';

/** A bargain that a shop can pick, and what to ask for to get it. */
export interface Bargain extends CurvePoint {
  readonly sharing: JigSharing;
}

/** What there is to pick from, the fewest jigs first, and each distinct overhang's own last. */
export const bargains = ({ points, each }: JigStudy): readonly Bargain[] => [
  ...points.map((point, place): Bargain => ({ ...point, sharing: place === 0 ? 'fewest' : point.jigs })),
  { jigs: each, total: 0, largest: 0, sharing: 'each' },
];

/** The one that a wish comes to: of a number of jigs the last that takes no more, or else the first. */
export function pickedBargain(offered: readonly Bargain[], wish: JigSharing): Bargain | undefined {
  if (wish === 'each') return offered.at(-1);
  if (wish === 'fewest') return offered[0];
  return offered.findLast(({ jigs, sharing }) => sharing !== 'each' && jigs <= wish) ?? offered[0];
}
