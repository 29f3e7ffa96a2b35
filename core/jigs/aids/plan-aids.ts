import type { Fastening } from '../../fastening/types.ts';
import type { Outcome } from '../../findings/finding.ts';
import type { DrawerFit } from '../../fit/types.ts';
import type { ShopStandard } from '../../rules/types.ts';
import type { BuildContext } from '../types.ts';
import { cornerDrillGuide } from './corner-drill-guide.ts';
import { guideNeeds } from './guide-needs.ts';
import { planGuides } from './plan-guides.ts';
import { planTemplates } from './plan-templates.ts';
import type { Aid, AidPlan, AidUse, PlanAidKinds } from './plan-types.ts';
import { pullTemplate } from './pull-template.ts';
import { templateNeeds } from './template-needs.ts';
import { FEWEST_DRAWERS } from './fewest-drawers.ts';

/** The kinds as they are. */
export const PLAN_AID_KINDS: PlanAidKinds = { cornerDrillGuide, pullTemplate, guideNeeds, templateNeeds };

/**
 * The drill guides and pull templates of an order: the same one is made once. What no aid can be made for is told
 * as a warning, for a drawer's paper template has all of its holes.
 */
export function planAids(
  fastenings: readonly Fastening[],
  standard: Pick<ShopStandard, 'box' | 'fastening' | 'pulls'>,
  context: BuildContext,
  /** So that a caller can keep the aids of set-ups that are still the same. */
  kinds: PlanAidKinds = PLAN_AID_KINDS,
  /** Drawers that must use a straight guide or a template for it to be cut. */
  fewest = FEWEST_DRAWERS,
): Outcome<AidPlan> {
  const guides = planGuides(fastenings, standard, context, kinds, fewest);
  const templates = planTemplates(fastenings, standard, context, kinds, fewest);
  return {
    value: {
      jigs: [...guides.jigs, ...templates.jigs],
      uses: fastenings.flatMap((fastening) =>
        usesOn(fastening, guides.aidsOf(fastening), templates.aidsOf(fastening)),
      ),
    },
    findings: [...guides.findings, ...templates.findings],
  };
}

/** The last uses of each drawer. */
const kept = new WeakMap<Fastening, readonly AidUse[]>();

/** The uses of aids on a drawer, those from before while its aids are the very same. */
function usesOn(fastening: Fastening, guides: readonly Aid[], templates: readonly Aid[]): readonly AidUse[] {
  const before = kept.get(fastening);
  if (before !== undefined && isOf(before, guides, templates)) return before;
  const uses = [...guides, ...templates].map((aid) => usedOn(fastening.fit, aid));
  kept.set(fastening, uses);
  return uses;
}

const isOf = (uses: readonly AidUse[], guides: readonly Aid[], templates: readonly Aid[]): boolean =>
  uses.length === guides.length + templates.length &&
  uses.every((use, index) => isUseOf(use, guides[index] ?? templates[index - guides.length]));

/** Places and words are the aid's own, so an aid is known by them. */
const isUseOf = (use: AidUse, aid: Aid | undefined): boolean =>
  aid !== undefined && use.jig === aid.jig && use.places === aid.places && use.words === aid.words;

const usedOn = (fit: DrawerFit, { jig, corner, places, beyond, words }: Aid): AidUse => ({
  fit,
  jig,
  corner,
  places,
  beyond,
  words,
});
