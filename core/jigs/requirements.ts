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

/** The set-ups of a drawer's edges, and all that those say on which jigs are used, as a text. */
interface OwnSetups {
  readonly setups: Readonly<Record<Edge, Setup>>;
  readonly text: string;
}

/** Fits do not change, so their set-ups are kept with them. */
const known = new WeakMap<DrawerFit, OwnSetups>();

function ownSetups(fit: DrawerFit): OwnSetups {
  const before = known.get(fit);
  if (before !== undefined) return before;
  const setups = byEdge((edge) => newSetup(fit, edge));
  const own = { setups, text: SET_EDGES.map((edge) => Object.values(setups[edge]).join('|')).join(' ') };
  known.set(fit, own);
  return own;
}

/** The edges that jigs set. */
const SET_EDGES = ['bottom', 'left', 'right'] as const;

/** Drawers whose edges ask jigs for the very same; far fewer than there are drawers. */
export interface AlikeFits {
  readonly first: DrawerFit;
  readonly fits: readonly DrawerFit[];
}

/** Drawers sorted into those that are alike, in the order in which they first appear. */
export const alikeFits = (fits: readonly DrawerFit[]): readonly AlikeFits[] =>
  [...groupBy(fits, (fit) => ownSetups(fit).text).values()].flatMap((alike) => {
    const [first] = alike;
    return first === undefined ? [] : [{ first, fits: alike }];
  });

const byEdge = <T>(of: (edge: Edge) => T): Readonly<Record<Edge, T>> => ({
  left: of('left'),
  right: of('right'),
  top: of('top'),
  bottom: of('bottom'),
});

/** The set-up of one edge of one drawer; the very same one each time. */
export const setupOf = (fit: DrawerFit, edge: Edge): Setup => ownSetups(fit).setups[edge];

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
  return (setup) => `${classOf(setup.overhang)}|${bevelKey(setup)}`;
}

/** What set-ups of different overhangs must share to be served by one jig. */
export const bevelKey: JigKey = ({ backBevel, frontThickness }) =>
  `${backBevel}|${backBevel === 0 ? '' : frontThickness}`;

/**
 * Distinct overhangs, the same one once, from the smallest to the largest. What the preferred kind refuses to
 * serve, a thin front say, is kept apart, so that the others still get that kind.
 */
export function requirements(
  drawers: readonly AlikeFits[],
  edgeOf: (fit: DrawerFit) => Edge,
  refused: (setup: Setup) => boolean,
): readonly Requirement[] {
  const own = drawers.map(({ first, fits }) => ({ setup: setupOf(first, edgeOf(first)), fits }));
  const keyOf = jigKeys(own.map(({ setup }) => setup));
  const groups = groupBy(own, ({ setup }) => `${keyOf(setup)} ${refused(setup)}`);
  return [...groups.values()]
    .map((group) => ({
      setup: strictest(group.map(({ setup }) => setup)),
      fits: group.flatMap(({ fits }) => fits),
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

/** Drawers whose two sides ask for the same, and the keys of that. */
interface Flanks {
  readonly left: string;
  readonly right: string;
  readonly fits: readonly DrawerFit[];
}

/**
 * The side on which each drawer's jig is used. Where the two sides differ, the one whose overhang more
 * drawers need, so that fewer jigs are made; the left where they do not.
 */
export function chooseSides(drawers: readonly AlikeFits[]): ReadonlyMap<DrawerFit, 'left' | 'right'> {
  const chosen = new Map<DrawerFit, 'left' | 'right'>();
  const open = new Map<string, Set<Flanks>>();
  for (const flanks of flanksOf(drawers)) {
    for (const side of SIDES) {
      const served = open.get(flanks[side]) ?? new Set();
      open.set(flanks[side], served.add(flanks));
    }
  }
  for (;;) {
    const best = mostServed(open);
    if (best === null) return chosen;
    for (const flanks of open.get(best) ?? []) {
      const side = flanks.left === best ? 'left' : 'right';
      for (const fit of flanks.fits) chosen.set(fit, side);
      for (const other of SIDES) if (flanks[other] !== best) open.get(flanks[other])?.delete(flanks);
    }
    open.delete(best);
  }
}

function flanksOf(drawers: readonly AlikeFits[]): readonly Flanks[] {
  const keyOf = jigKeys(drawers.flatMap(({ first }) => SIDES.map((side) => setupOf(first, side))));
  return drawers.map(({ first, fits }) => ({
    left: keyOf(setupOf(first, 'left')),
    right: keyOf(setupOf(first, 'right')),
    fits,
  }));
}

/** The key that serves the most drawers, of equals the first by name; null when none serves any. */
function mostServed(open: ReadonlyMap<string, ReadonlySet<Flanks>>): string | null {
  let best: string | null = null;
  let most = 0;
  for (const [key, served] of open) {
    let count = 0;
    for (const { fits } of served) count += fits.length;
    if (count > most || (count === most && best !== null && key < best)) [best, most] = [key, count];
  }
  return best;
}
