import { groupBy } from '../../collections/group-by.ts';
import { nearClasses } from '../../collections/near-classes.ts';
import { placeName } from '../../fastening/place-name.ts';
import type { Fastening } from '../../fastening/types.ts';
import type { Finding } from '../../findings/finding.ts';
import { warning } from '../../findings/make.ts';
import { drawerName } from '../../fit/drawer-name.ts';
import type { ShopStandard } from '../../rules/types.ts';
import { SAME_OVERHANG } from '../../units/tolerances.ts';
import type { BuildContext, Jig } from '../types.ts';
import type { CornerNeed } from './guide-setups.ts';
import type { AidUse, PlanAidKinds } from './plan-types.ts';
import type { AidKind, GuidePlace, GuideSetup } from './types.ts';

interface PlannedAids {
  readonly jigs: readonly Jig[];
  readonly uses: readonly AidUse[];
  readonly findings: readonly Finding[];
}

/** A corner of drawers that are fastened alike, with what it asks of a guide. */
interface GuideNeed extends CornerNeed {
  readonly fastenings: readonly Fastening[];
}

/** mm above the box front at which two axes are compared, besides at it. */
const COMPARED_AT = 100;

const HANDS = ['left', 'right'] as const;
const ENDS = ['bottom', 'top'] as const;

/**
 * One guide for each distinct set of bores of a corner: those of one hand, end, bit and depth whose bores are in
 * the same places share it, and so does a corner that needs only the first of its bores. The two hands of a pair
 * have the same number. Straight bores that few drawers need get none: their paper template has the places.
 */
export function planGuides(
  fastenings: readonly Fastening[],
  standard: Pick<ShopStandard, 'box' | 'fastening'>,
  context: BuildContext,
  { cornerDrillGuide: kind, cornerNeeds }: Pick<PlanAidKinds, 'cornerDrillGuide' | 'cornerNeeds'>,
  fewest: number,
): PlannedAids {
  // Drawers that are fastened alike have the very same places.
  const needs = [...groupBy(fastenings, ({ places }) => places).values()].flatMap((alike) => {
    const [first] = alike;
    const corners = first === undefined ? [] : cornerNeeds(first, standard);
    return corners.map((corner): GuideNeed => ({ ...corner, fastenings: alike }));
  });
  const keysOf = boreKeys(needs.map(({ setup }) => setup));
  const keyOf = (setup: GuideSetup): string => keysOf(setup).at(-1) ?? '';
  const findings: Finding[] = [];
  const served = needs.filter((need) => {
    const refusal = kind.refuses(need.setup, context);
    if (refusal !== null) {
      findings.push(...need.fastenings.map((fastening) => noGuide(need, fastening, refusal)));
    }
    return refusal === null;
  });
  const alike = [...groupBy(served, ({ setup }) => `${keyOf(setup)} ${setup.hand}`).values()];
  const groups = joined(alike, keysOf, kind, context).filter((group) => isWorthAGuide(group, fewest));
  const order = new Map<string, number>();
  for (const end of ENDS) {
    for (const [first] of groups) {
      const key = first === undefined ? '' : keyOf(first.setup);
      if (first?.setup.end === end && !order.has(key)) order.set(key, order.size + 1);
    }
  }
  const built = groups
    .flatMap((group) => {
      const [first] = group;
      if (first === undefined) return [];
      const { hand } = first.setup;
      return [{ group, hand, number: order.get(keyOf(first.setup)) ?? 0 }];
    })
    .toSorted((a, b) => a.number - b.number || HANDS.indexOf(a.hand) - HANDS.indexOf(b.hand))
    .map(({ group, hand, number }) => {
      const id = `${kind.code}${number}${hand === 'left' ? 'L' : 'R'}`;
      return { group, jig: kind.build(id, strictest(group), context) };
    });
  return {
    jigs: built.map(({ jig }) => jig),
    uses: built.flatMap(({ group, jig }) => group.flatMap((need) => usesOf(need, jig))),
    findings,
  };
}

function usesOf(need: GuideNeed, jig: Jig): readonly AidUse[] {
  const { corner, places, beyond } = need;
  const words = [...firstBoresWords(need, jig), ...beyondWords(need, jig)];
  return need.fastenings.map(({ fit }) => ({ fit, jig, corner, places, beyond, words }));
}

/** Whether a guide pays: one that leans always does, for nothing else holds a bit at an angle. */
function isWorthAGuide(group: readonly GuideNeed[], fewest: number): boolean {
  const drawersOf = ({ fastenings }: GuideNeed): number =>
    fastenings.reduce((sum, { fit }) => sum + fit.drawer.qty, 0);
  const drawers = group.reduce((sum, need) => sum + drawersOf(need), 0);
  return drawers >= fewest || group.some(({ setup }) => setup.places.some(leans));
}

const leans = ({ slope }: GuidePlace): boolean => slope.x !== 0 || slope.y !== 0;

/**
 * Groups of corners with each that needs only the first bores of another's guide taken into that one, as far as
 * the guide then still fits all of their boxes. The host's need comes first.
 */
function joined(
  groups: readonly (readonly GuideNeed[])[],
  keysOf: BoreKeys,
  kind: AidKind<GuideSetup>,
  context: BuildContext,
): readonly (readonly GuideNeed[])[] {
  const hosts: GuideNeed[][] = [];
  /** By hand and the bores that a host begins with. */
  const beginning = new Map<string, GuideNeed[][]>();
  const most = ([first]: readonly GuideNeed[]): number => first?.setup.places.length ?? 0;
  for (const group of groups.toSorted((a, b) => most(b) - most(a))) {
    const [guest] = group;
    if (guest === undefined) continue;
    const { hand } = guest.setup;
    const keys = keysOf(guest.setup).map((key) => `${key} ${hand}`);
    const fitting = beginning.get(keys.at(-1) ?? '')?.find(([host]) => {
      const all = host === undefined ? group : [host, ...group];
      return kind.refuses(strictest(all), context) === null;
    });
    if (fitting !== undefined) {
      fitting.push(...group);
      continue;
    }
    const host = [...group];
    hosts.push(host);
    for (const key of keys) beginning.set(key, [...(beginning.get(key) ?? []), host]);
  }
  return hosts;
}

/** Of a set-up: what names its first bore, its first two, and so on to all of them, but for the hand. */
type BoreKeys = (setup: GuideSetup) => readonly string[];

/** Bores that lie within a tolerance have the same name. */
function boreKeys(setups: readonly GuideSetup[]): BoreKeys {
  const classOf = nearClasses(setups.flatMap(allNumbersOf), SAME_OVERHANG);
  const known = new Map<GuideSetup, readonly string[]>();
  return (setup) => {
    const found = known.get(setup);
    if (found !== undefined) return found;
    let key = `${setup.end}|${classOf(setup.bit)}|${classOf(setup.bore)}`;
    const keys = setup.places.map((place) => {
      for (const number of numbersOf(place)) key += `|${classOf(number)}`;
      return key;
    });
    known.set(setup, keys);
    return keys;
  };
}

/** Set-ups do not change, so their numbers are kept with them. */
const numbers = new WeakMap<GuideSetup, readonly number[]>();

function allNumbersOf(setup: GuideSetup): readonly number[] {
  const { places, bit, bore } = setup;
  const all = numbers.get(setup) ?? [bit, bore, ...places.flatMap(numbersOf)];
  numbers.set(setup, all);
  return all;
}

/** Where a bore is, and where its axis is farther up; mm. */
const numbersOf = ({ at, slope, depth }: GuidePlace): readonly number[] => [
  at.x,
  at.y,
  at.x + COMPARED_AT * slope.x,
  at.y + COMPARED_AT * slope.y,
  depth,
];

/** The one set-up that serves all of a group: the smallest room, the thinnest box front. */
function strictest(group: readonly GuideNeed[]): GuideSetup {
  const setups = group.map(({ setup }) => setup);
  const [first] = setups;
  if (first === undefined) throw new RangeError('a guide needs a set-up');
  const least = (of: (setup: GuideSetup) => number): number => Math.min(...setups.map(of));
  return {
    ...first,
    screws: [...new Set(setups.flatMap(({ screws }) => screws))],
    guided: Math.max(...setups.map(({ guided }) => guided)),
    boxFront: least(({ boxFront }) => boxFront),
    room: { x: least(({ room }) => room.x), y: least(({ room }) => room.y) },
  };
}

function firstBoresWords({ places }: GuideNeed, { id, drilling }: Jig): readonly string[] {
  const bores = drilling?.bores.length ?? 0;
  if (places.length >= bores) return [];
  const used = places.length === 1 ? 'bore 1 only' : `bores 1 to ${places.length} only`;
  return [`Of ${id}, use ${used}.`];
}

function beyondWords({ beyond }: GuideNeed, jig: Jig): readonly string[] {
  if (beyond.length === 0) return [];
  return [
    `${jig.id} does not reach ${beyond.map(placeName).join(', ')}: mark ${beyond.length === 1 ? 'it' : 'them'} from the drawer's template.`,
  ];
}

function noGuide({ corner, places }: GuideNeed, { fit }: Fastening, refusal: string): Finding {
  const { drawer } = fit;
  const name = drawerName(drawer);
  return warning(
    'jigs/no-guide',
    `No drill guide can be made for the ${corner.hand} ${corner.end} corner of ${name}: ${refusal}. Mark its ${places.length === 1 ? 'screw' : `${places.length} screws`} from the drawer's template.`,
    { ...(drawer.row > 0 ? { row: drawer.row } : {}), drawer: name },
    { hand: corner.hand, end: corner.end },
  );
}
