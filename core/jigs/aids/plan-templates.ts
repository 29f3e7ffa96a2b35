import { groupBy } from '../../collections/group-by.ts';
import { nearClasses } from '../../collections/near-classes.ts';
import type { Fastening } from '../../fastening/types.ts';
import type { Finding } from '../../findings/finding.ts';
import { warning } from '../../findings/make.ts';
import { drawerName } from '../../fit/drawer-name.ts';
import type { ShopStandard } from '../../rules/types.ts';
import { SAME_OVERHANG } from '../../units/tolerances.ts';
import type { BuildContext, Jig } from '../types.ts';
import type { Aid, PlanAidKinds, PlannedAids } from './plan-types.ts';
import { edgeOf, holeNumbers, type TemplateNeed } from './template-needs.ts';
import type { TemplateSetup } from './types.ts';

/** What drawers that are fastened alike ask of one template. */
interface AlikeNeed {
  readonly need: TemplateNeed;
  readonly fastenings: readonly Fastening[];
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
  { pullTemplate: kind, templateNeeds }: Pick<PlanAidKinds, 'pullTemplate' | 'templateNeeds'>,
  fewest: number,
): PlannedAids {
  const findings: Finding[] = [];
  // Drawers that are fastened alike have the very same pull holes.
  const all = [...groupBy(fastenings, ({ pullHoles }) => pullHoles).values()].flatMap((alike) => {
    const [first] = alike;
    if (first === undefined) return [];
    const { needs, refusals } = templateNeeds(first, standard, context);
    if (needs.length === 0 && refusals.length > 0) {
      findings.push(...alike.map((fastening) => noTemplate(fastening, refusals)));
    }
    return needs.map((need): AlikeNeed => ({ need, fastenings: alike }));
  });
  const keyOf = templateKeys(all.map(({ need }) => need));
  const groups = [...groupBy(all, ({ need }) => `${keyOf(need)} ${need.setup.at}`).values()].filter(
    (group) => drawersOf(group) >= fewest,
  );
  const numbers = new Map<string, number>();
  for (const [first] of groups) {
    const key = first === undefined ? '' : keyOf(first.need);
    if (!numbers.has(key)) numbers.set(key, numbers.size + 1);
  }
  const built = groups
    .flatMap((group) => {
      const [first] = group;
      if (first === undefined) return [];
      const { at } = first.need.setup;
      return [{ group, at, number: numbers.get(keyOf(first.need)) ?? 0 }];
    })
    .toSorted((a, b) => a.number - b.number || PLACES.indexOf(a.at) - PLACES.indexOf(b.at))
    .map(({ group, at, number }) => {
      const id = `${kind.code}${number}${{ left: 'L', right: 'R', middle: '' }[at]}`;
      return { group, jig: kind.build(id, strictest(group), context) };
    });
  return {
    jigs: built.map(({ jig }) => jig),
    aidsOf: aidsOf(built),
    findings,
  };
}

/** The templates of each drawer, in the order in which they were built. */
function aidsOf(
  built: readonly { readonly group: readonly AlikeNeed[]; readonly jig: Jig }[],
): PlannedAids['aidsOf'] {
  const found = groupBy(
    built.flatMap(({ group, jig }) =>
      group.map(({ fastenings }) => ({ pullHoles: fastenings[0]?.pullHoles, aid: aidFor(jig) })),
    ),
    ({ pullHoles }) => pullHoles,
  );
  const aids = new Map([...found].map(([pullHoles, all]) => [pullHoles, all.map(({ aid }) => aid)]));
  return ({ pullHoles }) => aids.get(pullHoles) ?? [];
}

/** One aid for each template, so that what drawers use stays the same object while the template does. */
const kept = new WeakMap<Jig, Aid>();

function aidFor(jig: Jig): Aid {
  const aid = kept.get(jig) ?? { jig, corner: null, places: [], beyond: [], words: [] };
  kept.set(jig, aid);
  return aid;
}

const drawersOf = (group: readonly AlikeNeed[]): number =>
  group.flatMap(({ fastenings }) => fastenings).reduce((sum, { fit }) => sum + fit.drawer.qty, 0);

/** What two needs must share to share a template, but for the hand: a mirrored pair has one number. */
function templateKeys(needs: readonly TemplateNeed[]): (need: TemplateNeed) => string {
  const distinct = new Map(needs.map(({ text, setup }) => [text, setup]));
  const classOf = nearClasses([...distinct.values()].flatMap(holeNumbers), SAME_OVERHANG);
  const keys = new Map(
    [...distinct].map(([text, setup]) => [
      text,
      [...edgeOf(setup), ...holeNumbers(setup).map(classOf)].join('|'),
    ]),
  );
  return ({ text }) => keys.get(text) ?? '';
}

/** The thinnest and the smallest front of a group. */
function strictest(group: readonly AlikeNeed[]): TemplateSetup {
  const [first] = group;
  if (first === undefined) throw new RangeError('a template needs a set-up');
  let {
    frontThickness,
    front: { x, y },
  } = first.need.setup;
  for (const { need } of group) {
    frontThickness = Math.min(frontThickness, need.setup.frontThickness);
    x = Math.min(x, need.setup.front.x);
    y = Math.min(y, need.setup.front.y);
  }
  return { ...first.need.setup, frontThickness, front: { x, y } };
}

function noTemplate({ fit: { drawer } }: Fastening, refusals: readonly string[]): Finding {
  const name = drawerName(drawer);
  return warning(
    'jigs/no-template',
    `No pull template can be made for ${name}: ${[...new Set(refusals)].join('; ')}. Mark its pull's holes from the drawer's paper template.`,
    { ...(drawer.row > 0 ? { row: drawer.row } : {}), drawer: name },
  );
}
