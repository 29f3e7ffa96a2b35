import type { Fastening } from '../../fastening/types.ts';
import type { Outcome } from '../../findings/finding.ts';
import type { ShopStandard } from '../../rules/types.ts';
import type { BuildContext } from '../types.ts';
import { cornerDrillGuide } from './corner-drill-guide.ts';
import { cornerNeeds } from './guide-setups.ts';
import { planGuides } from './plan-guides.ts';
import { planTemplates } from './plan-templates.ts';
import type { AidPlan, PlanAidKinds } from './plan-types.ts';
import { pullTemplate } from './pull-template.ts';
import { templateSetups } from './template-setups.ts';
import { FEWEST_DRAWERS } from './fewest-drawers.ts';

/** The kinds as they are. */
export const PLAN_AID_KINDS: PlanAidKinds = { cornerDrillGuide, pullTemplate, cornerNeeds, templateSetups };

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
  const place = new Map(fastenings.map(({ fit }, index) => [fit, index]));
  return {
    value: {
      jigs: [...guides.jigs, ...templates.jigs],
      uses: [...guides.uses, ...templates.uses].toSorted(
        (a, b) => (place.get(a.fit) ?? 0) - (place.get(b.fit) ?? 0),
      ),
    },
    findings: [...guides.findings, ...templates.findings],
  };
}
