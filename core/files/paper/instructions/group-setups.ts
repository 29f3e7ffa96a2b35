import type { Fastening } from '../../../fastening/types.ts';
import type { DrawerFit } from '../../../fit/types.ts';
import { groupBy } from '../../../collections/group-by.ts';
import type { AidUse } from '../../../jigs/aids/plan-types.ts';
import type { JigUse } from '../../../jigs/plan-types.ts';
import { EDGES } from '../../../order/types.ts';
import { sameLength, SAME_OVERHANG } from '../../../units/tolerances.ts';
import type { Template } from '../template/types.ts';
import type { PaperSetup, SetupAid, SetupJig, SetupMember } from './types.ts';

export interface SetupsOf {
  readonly fits: readonly DrawerFit[];
  readonly uses: readonly JigUse[];
  /** Drill guides and pull templates. */
  readonly aids?: readonly AidUse[];
  readonly fasteningOf: (fit: DrawerFit) => Fastening | null;
  readonly templates: readonly Template[];
}

/** The distinct setups of an order, in the order in which the drawers need them. */
export function groupSetups({
  fits,
  uses,
  aids = [],
  fasteningOf,
  templates,
}: SetupsOf): readonly PaperSetup[] {
  const usesOf = groupBy(uses, ({ fit }) => fit);
  const aidsOf = groupBy(aids, ({ fit }) => fit);
  const groups: {
    readonly likeness: Likeness;
    readonly jigs: readonly SetupJig[];
    readonly aids: readonly SetupAid[];
    readonly members: SetupMember[];
  }[] = [];
  for (const fit of fits) {
    const jigs = jigsOf(usesOf.get(fit) ?? []);
    const helpers = setupAids(aidsOf.get(fit) ?? []);
    const fastening = fasteningOf(fit);
    const template = templates.find(({ users }) => users.includes(fit))?.id ?? null;
    const likeness = likenessOf(fit, fastening, jigs, helpers);
    const group = groups.find((known) => alike(known.likeness, likeness));
    const member = { fit, fastening, template };
    if (group === undefined) groups.push({ likeness, jigs, aids: helpers, members: [member] });
    else group.members.push(member);
  }
  return groups.map(({ jigs, aids, members }, index) => ({ number: index + 1, jigs, aids, members }));
}

const jigsOf = (uses: readonly JigUse[]): readonly SetupJig[] =>
  [...groupBy(uses, ({ jig }) => jig.id)].map(([id, used]) => ({ id, edges: used.map(({ edge }) => edge) }));

const setupAids = (uses: readonly AidUse[]): readonly SetupAid[] =>
  [...groupBy(uses, ({ jig }) => jig.id)].map(([id, used]) => ({
    id,
    corners: used.flatMap(({ corner }) => (corner === null ? [] : [corner])),
  }));

/** What two drawers must have in common for one sheet to serve both. */
interface Likeness {
  readonly words: readonly string[];
  readonly numbers: readonly number[];
}

/** The top overhang is not among it: it is what is left over, and no jig sets it. */
function likenessOf(
  fit: DrawerFit,
  fastening: Fastening | null,
  jigs: readonly SetupJig[],
  aids: readonly SetupAid[],
): Likeness {
  const places = fastening?.places ?? [];
  const set = EDGES.filter((edge) => edge !== 'top' || jigs.some(({ edges }) => edges.includes('top')));
  return {
    words: [
      ...jigs.map(({ id, edges }) => `${id} ${edges.join(' ')}`),
      ...aids.map(({ id, corners }) => `${id} ${corners.map(({ end, hand }) => `${end} ${hand}`).join(' ')}`),
      fastening?.screw?.name ?? '',
      ...places.map(({ corner: { hand, end }, index }) => `${hand} ${end} ${index}`),
    ],
    numbers: [
      ...set.map((edge) => fit.overhang[edge]),
      fit.frontThickness,
      fit.boxFront,
      fit.rules.backBevel.value,
      fit.rules.startLow.value,
      fastening?.holes?.pilotDiameter ?? 0,
      fastening?.holes?.pilotDepth ?? 0,
      fastening?.holes?.clearanceDiameter ?? 0,
      ...places.flatMap(({ lean, fromSide, fromEnd }) => [lean.side, lean.rail, fromSide, fromEnd]),
    ],
  };
}

const alike = (a: Likeness, b: Likeness): boolean =>
  a.words.length === b.words.length &&
  a.words.every((word, index) => word === b.words[index]) &&
  a.numbers.length === b.numbers.length &&
  a.numbers.every((value, index) => sameLength(value, b.numbers[index] ?? Infinity, SAME_OVERHANG));
