import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import { drawerName } from '../fit/drawer-name.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Edge } from '../order/types.ts';
import type { PlanKinds } from './plan-types.ts';
import { alikeFits, chooseSides, requirements, sharedRequirement, type Requirement } from './requirements.ts';
import type { SharedNeeds } from './sharing/shared-needs.ts';
import type { BuildContext, Jig, JigKind, Setup } from './types.ts';
import type { UseList } from './use-list.ts';
import { mmText } from '../units/mm-text.ts';

interface EdgeJigs {
  readonly jigs: readonly Jig[];
  readonly findings: readonly Finding[];
}

/**
 * One jig for each distinct bottom overhang and each distinct side overhang, two sides to a block; or those that
 * drawers share. Their uses go to the list.
 */
export function planEdgeJigs(
  fits: readonly DrawerFit[],
  context: BuildContext,
  kinds: PlanKinds,
  shared: SharedNeeds,
  uses: UseList,
): EdgeJigs {
  const { bottomFence, sideSpacer, stepProfile } = kinds;
  const alike = alikeFits(fits);
  const sides = chooseSides(alike);
  const bottomOf = () => 'bottom' as const;
  const sideOf = (fit: DrawerFit) => sides.get(fit) ?? 'left';
  const bottoms = sharedRequirements(shared('bottom'), bottomOf);
  const flanks = sharedRequirements(shared('side'), sideOf);
  /** Of drawers that share nothing. */
  const needs = (kind: JigKind, edgeOf: (fit: DrawerFit) => Edge, sharing: readonly Group[]) => {
    const served = new Set(sharing.flat().flatMap((need) => need.fits));
    return requirements(
      served.size === 0 ? alike : alikeFits(fits.filter((fit) => !served.has(fit))),
      edgeOf,
      (setup) => kind.refuses([setup], context) !== null,
    );
  };

  const planned = [
    ...[...bottoms, ...needs(bottomFence, bottomOf, bottoms).map((need) => [need])].map((group) =>
      planOne(group, [bottomFence, stepProfile], context),
    ),
    ...[...flanks, ...inPairs(needs(sideSpacer, sideOf, flanks), sideSpacer, context)].map((group) =>
      planOne(group, [sideSpacer, stepProfile], context),
    ),
  ];
  const numbers = new Map<string, number>();
  const jigs: Jig[] = [];
  const findings: Finding[] = [];
  for (const { needs, kind, refusal } of planned) {
    if (kind === null) {
      for (const { fits: unserved, setup } of needs) {
        const told = new Set(unserved);
        findings.push(...fits.filter((fit) => told.has(fit)).map((fit) => noJig(fit, setup, refusal)));
      }
      continue;
    }
    const number = (numbers.get(kind.code) ?? 0) + 1;
    numbers.set(kind.code, number);
    const jig = kind.build(
      `${kind.code}${number}`,
      needs.map(({ setup }) => setup),
      context,
    );
    jigs.push(jig);
    for (const { fits: served, setup, isShared = false } of needs) {
      for (const fit of served) {
        const edge = setup.edge === 'bottom' ? 'bottom' : sideOf(fit);
        uses.add(fit, edge, jig, isShared ? setup.overhang : fit.overhang[edge]);
      }
    }
  }
  return { jigs, findings };
}

/** What one jig serves: one overhang, or the two of a block. */
type Group = readonly Requirement[];

/** The jigs that drawers share, from the smallest overhang to the largest. */
const sharedRequirements = (
  jigs: ReturnType<SharedNeeds>,
  edgeOf: (fit: DrawerFit) => Edge,
): readonly Group[] =>
  jigs
    .map((settings) => settings.map(({ overhangs, fits }) => sharedRequirement(fits, edgeOf, overhangs[0])))
    .toSorted((a, b) => (a[0]?.setup.overhang ?? 0) - (b[0]?.setup.overhang ?? 0));

interface Planned {
  readonly needs: readonly Requirement[];
  readonly kind: JigKind | null;
  readonly refusal: string;
}

/** The preferred kind, another where that refuses, and why there is none where both do. */
function planOne(
  needs: readonly Requirement[],
  [preferred, other]: readonly [JigKind, JigKind],
  context: BuildContext,
): Planned {
  const setups = needs.map(({ setup }) => setup);
  const first = preferred.refuses(setups, context);
  if (first === null) return { needs, kind: preferred, refusal: '' };
  const second = other.refuses(setups, context);
  return { needs, kind: second === null ? other : null, refusal: `${first}; ${second ?? ''}` };
}

/** Neighbouring side overhangs share a block of two widths where one can be built. */
function inPairs(
  needs: readonly Requirement[],
  sideSpacer: JigKind,
  context: BuildContext,
): readonly (readonly Requirement[])[] {
  const groups: Requirement[][] = [];
  for (const need of needs) {
    const open = groups.at(-1);
    const [alone] = open ?? [];
    if (
      open?.length === 1 &&
      alone !== undefined &&
      sideSpacer.refuses([alone.setup, need.setup], context) === null
    ) {
      open.push(need);
    } else {
      groups.push([need]);
    }
  }
  return groups;
}

/** Told of each drawer by itself, so that each row shows it. */
function noJig({ drawer }: DrawerFit, setup: Setup, refusal: string): Finding {
  const name = drawerName(drawer);
  return error(
    'jigs/none',
    `no jig can set the ${setup.edge} overhang of ${mmText(setup.overhang)} of ${name}: ${refusal}`,
    { ...(drawer.row > 0 ? { row: drawer.row } : {}), drawer: name },
    { edge: setup.edge, overhang: setup.overhang },
  );
}
