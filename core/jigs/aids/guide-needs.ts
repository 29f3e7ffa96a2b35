import type { Fastening } from '../../fastening/types.ts';
import type { ShopStandard } from '../../rules/types.ts';
import type { BuildContext } from '../types.ts';
import { cornerDrillGuide } from './corner-drill-guide.ts';
import { cornerNeeds, type CornerNeed } from './guide-setups.ts';
import type { GuidePlace, GuideSetup } from './types.ts';

/** What a drawer asks of guides, and all that can be said of it before the rest of the order is seen. */
export interface GuideNeeds {
  readonly corners: readonly (CornerNeed & {
    /** Why no guide can be made for it, or null. */
    readonly refusal: string | null;
  })[];
  /** Drawers whose texts are the same ask for the very same bores; only their boxes may differ. */
  readonly text: string;
}

/** The `cornerNeeds` of a drawer; of drawers that are fastened alike they are the same. */
export function guideNeeds(
  fastening: Fastening,
  standard: Pick<ShopStandard, 'box' | 'fastening'>,
  context: BuildContext,
): GuideNeeds {
  const corners = cornerNeeds(fastening, standard).map((need) => ({
    ...need,
    refusal: cornerDrillGuide.refuses(need.setup, context),
  }));
  const texts = corners.map(({ setup, refusal }) =>
    [setup.hand, setup.end, setup.screws, ...boreNumbers(setup), refusal].join(' '),
  );
  return { corners, text: texts.join('|') };
}

/** mm above the box front at which two axes are compared, besides at it. */
const COMPARED_AT = 100;

/** All that tells bores from others. */
export const boreNumbers = ({ bit, bore, places }: GuideSetup): readonly number[] => [
  bit,
  bore,
  ...places.flatMap(placeNumbers),
];

/** Where a bore is, and where its axis is farther up; mm. */
export const placeNumbers = ({ at, slope, depth }: GuidePlace): readonly number[] => [
  at.x,
  at.y,
  at.x + COMPARED_AT * slope.x,
  at.y + COMPARED_AT * slope.y,
  depth,
];
