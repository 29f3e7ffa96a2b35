import type { Fastening } from '../../../fastening/types.ts';
import type { DrawerFit } from '../../../fit/types.ts';
import { groupBy } from '../../../collections/group-by.ts';
import type { AidUse } from '../../../jigs/aids/plan-types.ts';
import type { JigUse } from '../../../jigs/plan-types.ts';
import { hangingOf, hungFit, sidewaysOf } from '../../../jigs/sharing/hung-by.ts';
import type { Template } from '../template/types.ts';
import { alike, type Likeness } from '../alike.ts';
import { setupLikeness, variantLikeness } from './likeness.ts';
import type { PaperSetup, SetupAid, SetupJig, SetupMember } from './types.ts';

export interface SetupsOf {
  readonly fits: readonly DrawerFit[];
  readonly uses: readonly JigUse[];
  /** Drill guides and pull templates. */
  readonly aids?: readonly AidUse[];
  readonly fasteningOf: (fit: DrawerFit) => Fastening | null;
  readonly templates: readonly Template[];
}

/** Lines that the table of one page holds beside the rest of it, so that its words stay legible. */
const LINES = 9;

interface Group {
  readonly likeness: Likeness;
  readonly jigs: readonly SetupJig[];
  readonly variants: Variant[];
}

interface Variant {
  readonly likeness: Likeness;
  readonly aids: readonly SetupAid[];
  readonly members: SetupMember[];
}

/**
 * The distinct setups of an order, in the order in which the drawers need them: one for drawers with the same jigs and
 * screws, with a variant for each way in which their screws are placed and guided.
 */
export function groupSetups({
  fits,
  uses,
  aids = [],
  fasteningOf,
  templates,
}: SetupsOf): readonly PaperSetup[] {
  const usesOf = groupBy(uses, ({ fit }) => fit);
  const aidsOf = groupBy(aids, ({ fit }) => fit);
  const groups: Group[] = [];
  for (const wanted of fits) {
    const fastening = fasteningOf(wanted);
    const { fit, sideways, used } = hungBy(wanted, usesOf.get(wanted) ?? []);
    const jigs = jigsOf(used);
    const own = (aidsOf.get(wanted) ?? []).map(setupAid);
    const template = templates.find(({ users }) => users.includes(wanted))?.id ?? null;
    const member = { fit, sideways, fastening, template };
    const likeness = setupLikeness(fit, fastening, jigs, sideways);
    const variant = { likeness: variantLikeness(fastening, own), aids: own, members: [member] };
    const like = groups.filter((known) => alike(known.likeness, likeness));
    const same = like
      .flatMap(({ variants }) => variants)
      .find((known) => alike(known.likeness, variant.likeness));
    const roomy = like.find(({ variants }) => linesOf([...variants, variant]) <= LINES);
    if (same !== undefined) same.members.push(member);
    else if (roomy !== undefined) roomy.variants.push(variant);
    else groups.push({ likeness, jigs, variants: [variant] });
  }
  return groups.map(({ jigs, variants }, at) => ({
    number: at + 1,
    jigs,
    variants: variants.map(({ aids: own, members }, index) => ({
      name: variants.length === 1 ? `${at + 1}` : `${at + 1}${LETTERS[index] ?? ''}`,
      aids: own,
      members,
    })),
  }));
}

/** A line for the guides of each variant, and one for each screw of the corner that has most. */
function linesOf(variants: readonly Variant[]): number {
  return variants.reduce((sum, { members: [first] }) => {
    const screws = groupBy(first?.fastening?.places ?? [], ({ corner }) => `${corner.end} ${corner.hand}`);
    return sum + 1 + Math.max(0, ...[...screws.values()].map(({ length }) => length));
  }, 0);
}

const LETTERS = 'abcdefghi';

/** A drawer as its jigs set it: those that it is set by, and what is left to the side adjuster. */
function hungBy(wanted: DrawerFit, uses: readonly JigUse[]) {
  const hanging = hangingOf(uses.map(({ edge, jig, adjustment }) => ({ edge, jigId: jig.id, adjustment })));
  return {
    fit: hungFit(wanted, hanging),
    sideways: sidewaysOf(hanging),
    used: uses.filter(({ jig }) => hanging.jigIds.includes(jig.id)),
  };
}

const jigsOf = (uses: readonly JigUse[]): readonly SetupJig[] =>
  [...groupBy(uses, ({ jig }) => jig)].map(([{ id, kind, seats }, used]) => ({
    id,
    kind,
    edges: used.map(({ edge }) => edge),
    sets: used.map(({ overhang }) => overhang),
    twoWay: seats.length > 1,
  }));

const setupAid = ({ jig, corner, places }: AidUse): SetupAid => ({
  id: jig.id,
  corner,
  screws: places.map(({ index }) => index),
  bores: jig.drilling?.bores.length ?? 0,
});
