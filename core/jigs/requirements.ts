import { nearClasses } from '../collections/near-classes.ts';
import { groupBy } from '../collections/group-by.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Edge } from '../order/types.ts';
import { SAME_OVERHANG } from '../units/tolerances.ts';
import { strictest } from './setups.ts';
import type { Setup } from './types.ts';

/** An overhang that some drawers need at an edge, and the set-up that serves them all. */
export interface Requirement {
  readonly setup: Setup;
  readonly fits: readonly DrawerFit[];
  /** The overhang is one that drawers of others share. */
  readonly isShared?: true;
}

/** Fits do not change, so their set-ups are kept with them. */
const known = new WeakMap<DrawerFit, Partial<Record<Edge, Setup>>>();

/** The set-up of one edge of one drawer; the very same one each time. */
export function setupOf(fit: DrawerFit, edge: Edge): Setup {
  const own = known.get(fit) ?? {};
  known.set(fit, own);
  return (own[edge] ??= newSetup(fit, edge));
}

const newSetup = (fit: DrawerFit, edge: Edge): Setup => ({
  edge,
  overhang: fit.overhang[edge],
  frontThickness: fit.frontThickness,
  backBevel: fit.rules.backBevel.value,
  edgeLength: edge === 'bottom' || edge === 'top' ? fit.frontW : fit.frontH,
  boxReach: fit.boxFront,
  boxLength: edge === 'bottom' || edge === 'top' ? fit.boxW : fit.boxH,
  clearLength: edge === 'bottom' || edge === 'top' ? Infinity : clearOfSlide(fit),
});

/** A slide on the side of the box leaves a stretch above and below it. */
const clearOfSlide = ({ boxH, rules }: DrawerFit): number => {
  const member = rules.sideMember.value;
  return member === 0 ? Infinity : Math.max(0, (boxH - member) / 2);
};

/** What two set-ups must share to share a jig. */
export type JigKey = (setup: Setup) => string;

/**
 * The keys of a plan's set-ups: overhang, and on a bevelled edge the bevel and the thickness, on which the
 * lip's place depends there.
 */
export function jigKeys(setups: readonly Setup[]): JigKey {
  const classOf = nearClasses(
    setups.map(({ overhang }) => overhang),
    SAME_OVERHANG,
  );
  const keys = new Map<Setup, string>();
  return (setup) => {
    const key = keys.get(setup) ?? `${classOf(setup.overhang)}|${bevelKey(setup)}`;
    keys.set(setup, key);
    return key;
  };
}

/** What set-ups of different overhangs must share to be served by one jig. */
export const bevelKey: JigKey = ({ backBevel, frontThickness }) =>
  `${backBevel}|${backBevel === 0 ? '' : frontThickness}`;

/**
 * Distinct overhangs, the same one once, from the smallest to the largest. What the preferred kind refuses to
 * serve, a thin front say, is kept apart, so that the others still get that kind.
 */
export function requirements(
  needs: readonly { readonly fit: DrawerFit; readonly setup: Setup }[],
  refused: (setup: Setup) => boolean,
): readonly Requirement[] {
  const keyOf = jigKeys(needs.map(({ setup }) => setup));
  const groups = groupBy(needs, ({ setup }) => `${keyOf(setup)} ${refused(setup)}`);
  return [...groups.values()]
    .map((group) => ({
      setup: strictest(group.map(({ setup }) => setup)),
      fits: group.map(({ fit }) => fit),
    }))
    .toSorted((a, b) => a.setup.overhang - b.setup.overhang || a.setup.backBevel - b.setup.backBevel);
}

/** Drawers that share an overhang, whatever their own. */
export const sharedRequirement = (
  fits: readonly DrawerFit[],
  edgeOf: (fit: DrawerFit) => Edge,
  overhang: number | undefined,
): Requirement => {
  if (overhang === undefined) throw new RangeError('sharedRequirement: a jig needs an overhang');
  const setups = fits.map((fit) => ({ ...setupOf(fit, edgeOf(fit)), overhang }));
  return { setup: strictest(setups), fits, isShared: true };
};

const SIDES = ['left', 'right'] as const;

/**
 * The side on which each drawer's jig is used. Where the two sides differ, the one whose overhang more
 * drawers need, so that fewer jigs are made; the left where they do not.
 */
export function chooseSides(fits: readonly DrawerFit[]): ReadonlyMap<DrawerFit, 'left' | 'right'> {
  const chosen = new Map<DrawerFit, 'left' | 'right'>();
  const keyOf = jigKeys(fits.flatMap((fit) => SIDES.map((side) => setupOf(fit, side))));
  const keysOf = (fit: DrawerFit) => SIDES.map((side) => keyOf(setupOf(fit, side)));
  const open = new Map<string, Set<DrawerFit>>();
  for (const fit of fits) {
    for (const key of keysOf(fit)) {
      const served = open.get(key) ?? new Set();
      open.set(key, served.add(fit));
    }
  }
  for (;;) {
    const best = mostServed(open);
    if (best === null) return chosen;
    for (const fit of open.get(best) ?? []) {
      const keys = keysOf(fit);
      chosen.set(fit, keys[0] === best ? 'left' : 'right');
      for (const key of keys) if (key !== best) open.get(key)?.delete(fit);
    }
    open.delete(best);
  }
}

/** The key that serves the most drawers, of equals the first by name; null when none serves any. */
function mostServed(open: ReadonlyMap<string, ReadonlySet<DrawerFit>>): string | null {
  let best: string | null = null;
  let most = 0;
  for (const [key, { size }] of open) {
    if (size > most || (size === most && best !== null && key < best)) [best, most] = [key, size];
  }
  return best;
}
