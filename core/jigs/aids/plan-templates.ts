import { groupBy } from '../../collections/group-by.ts';
import { nearClasses } from '../../collections/near-classes.ts';
import type { Fastening } from '../../fastening/types.ts';
import type { Finding } from '../../findings/finding.ts';
import { warning } from '../../findings/make.ts';
import { drawerName } from '../../fit/drawer-name.ts';
import type { ShopStandard } from '../../rules/types.ts';
import { SAME_OVERHANG } from '../../units/tolerances.ts';
import type { BuildContext, Jig } from '../types.ts';
import type { AidUse, PlanAidKinds } from './plan-types.ts';
import type { TemplateSetup } from './types.ts';

/** What drawers that are fastened alike ask of a template. */
interface Need {
  readonly fastenings: readonly Fastening[];
  readonly setup: TemplateSetup;
}

const PLACES = ['left', 'right', 'middle'] as const;

/**
 * One template for each distinct set of pull holes at a corner, or on the centre line where no corner one can
 * serve. Holes that few drawers share get none: their paper template has the places.
 */
export function planTemplates(
  fastenings: readonly Fastening[],
  standard: Pick<ShopStandard, 'fastening' | 'pulls'>,
  context: BuildContext,
  { pullTemplate: kind, templateSetups }: Pick<PlanAidKinds, 'pullTemplate' | 'templateSetups'>,
  fewest: number,
): {
  readonly jigs: readonly Jig[];
  readonly uses: readonly AidUse[];
  readonly findings: readonly Finding[];
} {
  const findings: Finding[] = [];
  // Drawers that are fastened alike have the very same pull holes.
  const alike = [...groupBy(fastenings, ({ pullHoles }) => pullHoles).values()];
  const all = alike.flatMap((same): readonly Need[] => {
    const [first] = same;
    const choices = first === undefined ? [] : templateSetups(first, standard);
    const reasons: string[] = [];
    for (const setups of choices) {
      const refusal = setups.map((setup) => kind.refuses(setup, context)).find((why) => why !== null);
      if (refusal === undefined || refusal === null) {
        return setups.map((setup) => ({ fastenings: same, setup }));
      }
      reasons.push(refusal);
    }
    if (reasons.length > 0) findings.push(...same.map((fastening) => noTemplate(fastening, reasons)));
    return [];
  });
  const keyOf = templateKeys(all.map(({ setup }) => setup));
  const groups = [...groupBy(all, ({ setup }) => `${keyOf(setup)} ${setup.at}`).values()].filter(
    (group) => drawersOf(group) >= fewest,
  );
  const numbers = new Map<string, number>();
  for (const [first] of groups) {
    const key = first === undefined ? '' : keyOf(first.setup);
    if (!numbers.has(key)) numbers.set(key, numbers.size + 1);
  }
  const built = groups
    .flatMap((group) => {
      const [first] = group;
      return first === undefined
        ? []
        : [{ group, first: first.setup, number: numbers.get(keyOf(first.setup)) ?? 0 }];
    })
    .toSorted((a, b) => a.number - b.number || PLACES.indexOf(a.first.at) - PLACES.indexOf(b.first.at))
    .map(({ group, first, number }) => {
      const id = `${kind.code}${number}${{ left: 'L', right: 'R', middle: '' }[first.at]}`;
      return { group, jig: kind.build(id, strictest(first, group), context) };
    });
  return {
    jigs: built.map(({ jig }) => jig),
    uses: built.flatMap(({ group, jig }) =>
      group
        .flatMap((need) => need.fastenings)
        .map(({ fit }): AidUse => ({ fit, jig, corner: null, places: [], beyond: [], words: [] })),
    ),
    findings,
  };
}

const drawersOf = (group: readonly Need[]): number =>
  group.flatMap(({ fastenings }) => fastenings).reduce((sum, { fit }) => sum + fit.drawer.qty, 0);

/** What two set-ups must share to share a template, but for the hand: a mirrored pair has one number. */
function templateKeys(setups: readonly TemplateSetup[]): (setup: TemplateSetup) => string {
  const numbersOf = ({ holes, bit, bore }: TemplateSetup): readonly number[] => [
    bit,
    bore,
    ...holes.flatMap(({ x, y }) => [x, y]),
  ];
  const classOf = nearClasses(setups.flatMap(numbersOf), SAME_OVERHANG);
  const keys = new Map(
    setups.map((setup) => {
      const { at, backBevel, frontThickness } = setup;
      const edge = backBevel === 0 ? '' : `${backBevel} ${frontThickness}`;
      return [
        setup,
        [at === 'middle' ? 'middle' : 'corner', edge, ...numbersOf(setup).map(classOf)].join('|'),
      ];
    }),
  );
  return (setup) => keys.get(setup) ?? '';
}

/** The thinnest and the smallest front of a group. */
function strictest(first: TemplateSetup, group: readonly Need[]): TemplateSetup {
  const least = (of: (setup: TemplateSetup) => number): number =>
    Math.min(...group.map(({ setup }) => of(setup)));
  return {
    ...first,
    frontThickness: least(({ frontThickness }) => frontThickness),
    front: { x: least(({ front }) => front.x), y: least(({ front }) => front.y) },
  };
}

function noTemplate({ fit: { drawer } }: Fastening, refusals: readonly string[]): Finding {
  const name = drawerName(drawer);
  return warning(
    'jigs/no-template',
    `No pull template can be made for ${name}: ${[...new Set(refusals)].join('; ')}. Mark its pull's holes from the drawer's paper template.`,
    { ...(drawer.row > 0 ? { row: drawer.row } : {}), drawer: name },
  );
}
