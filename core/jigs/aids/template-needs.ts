import type { Fastening } from '../../fastening/types.ts';
import type { ShopStandard } from '../../rules/types.ts';
import type { BuildContext } from '../types.ts';
import { pullTemplate } from './pull-template.ts';
import { templateSetups } from './template-setups.ts';
import type { TemplateSetup } from './types.ts';

/** What a drawer asks of one template. */
export interface TemplateNeed {
  readonly setup: TemplateSetup;
  /** Holes and edge: needs whose texts are the same differ only in where the template is put and in the front's size. */
  readonly text: string;
}

/** What a drawer asks of templates. */
export interface TemplateNeeds {
  /** Those of the best way to place its pull holes; none where there is no way, or no hole. */
  readonly needs: readonly TemplateNeed[];
  /** Why each way that would have been better was refused. */
  readonly refusals: readonly string[];
}

/** The best of `templateSetups` that can be made; of drawers that are fastened alike it is the same. */
export function templateNeeds(
  fastening: Fastening,
  standard: Pick<ShopStandard, 'fastening' | 'pulls'>,
  context: BuildContext,
): TemplateNeeds {
  const refusals: string[] = [];
  for (const setups of templateSetups(fastening, standard)) {
    const refusal = setups.map((setup) => pullTemplate.refuses(setup, context)).find((why) => why !== null);
    if (refusal === undefined || refusal === null) return { needs: setups.map(needFor), refusals };
    refusals.push(refusal);
  }
  return { needs: [], refusals };
}

const needFor = (setup: TemplateSetup): TemplateNeed => ({
  setup,
  text: [...edgeOf(setup), ...holeNumbers(setup)].join(' '),
});

/** What a template's lips depend on besides: whether it is at a corner, and on a bevelled edge bevel and thickness. */
export const edgeOf = ({ at, backBevel, frontThickness }: TemplateSetup): readonly (string | number)[] => [
  at === 'middle' ? 'middle' : 'corner',
  backBevel === 0 ? '' : `${backBevel} ${frontThickness}`,
];

/** All that tells the holes of templates from others. */
export const holeNumbers = ({ holes, bit, bore }: TemplateSetup): readonly number[] => [
  bit,
  bore,
  ...holes.flatMap(({ x, y }) => [x, y]),
];
