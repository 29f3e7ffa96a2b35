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
import { guideCorners, strictest, type AlikeDrawers, type GuideCorner } from './guide-corners.ts';
import { boreNumbers, placeNumbers } from './guide-needs.ts';
import type { CornerNeed } from './guide-setups.ts';
import type { Aid, PlanAidKinds, PlannedAids } from './plan-types.ts';
import type { AidKind, GuidePlace, GuideSetup } from './types.ts';

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
  { cornerDrillGuide: kind, guideNeeds }: Pick<PlanAidKinds, 'cornerDrillGuide' | 'guideNeeds'>,
  fewest: number,
): PlannedAids {
  // Drawers that are fastened alike have the very same places.
  const order = [...groupBy(fastenings, ({ places }) => places).values()].flatMap(
    (alike): readonly AlikeDrawers[] => {
      const [first] = alike;
      return first === undefined ? [] : [{ fastenings: alike, needs: guideNeeds(first, standard, context) }];
    },
  );
  const corners = guideCorners(order);
  const keysOf = boreKeys(corners);
  const keyOf = (corner: GuideCorner): string => keysOf(corner).at(-1) ?? '';
  const served = corners.filter(({ refusal }) => refusal === null);
  const alike = [...groupBy(served, (corner) => `${keyOf(corner)} ${corner.setup.hand}`).values()]
    // Bores that count as in the same place may just fit one box and just not another.
    .flatMap((group) =>
      group.length < 2 || kind.refuses(setupFor(group), context) === null
        ? [group]
        : group.map((corner) => [corner]),
    );
  const groups = joined(alike, keysOf, kind, context).filter((group) => isWorthAGuide(group, fewest));
  const built = numbered(groups, keyOf)
    .toSorted((a, b) => a.number - b.number || HANDS.indexOf(a.hand) - HANDS.indexOf(b.hand))
    .map(({ group, hand, number }) => {
      const id = `${kind.code}${number}${hand === 'left' ? 'L' : 'R'}`;
      return { group, jig: kind.build(id, setupFor(group), context) };
    });
  return {
    jigs: built.map(({ jig }) => jig),
    aidsOf: aidsOf(order, built),
    findings: order.flatMap(refusals),
  };
}

/** Groups with the hand and the number of their guide: those of bottom corners first, a pair of hands the same. */
function numbered(groups: readonly (readonly GuideCorner[])[], keyOf: (corner: GuideCorner) => string) {
  const guidesOf = new Map<string, number>();
  const named = groups.flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const { hand, end } = first.setup;
    const own = `${keyOf(first)} ${hand}`;
    // Of the same bores there may be another guide of that hand, for a box that the first does not fit.
    const before = guidesOf.get(own) ?? 0;
    guidesOf.set(own, before + 1);
    return [{ group, hand, end, name: `${keyOf(first)} ${before}` }];
  });
  const numbers = new Map<string, number>();
  for (const end of ENDS) {
    for (const { name, end: own } of named) {
      if (own === end && !numbers.has(name)) numbers.set(name, numbers.size + 1);
    }
  }
  return named.map(({ group, hand, name }) => ({ group, hand, number: numbers.get(name) ?? 0 }));
}

/** The guides of each drawer, in the order in which they were built. */
function aidsOf(
  order: readonly AlikeDrawers[],
  built: readonly { readonly group: readonly GuideCorner[]; readonly jig: Jig }[],
): PlannedAids['aidsOf'] {
  const guides = groupBy(
    built.flatMap(({ group, jig }) => group.map(({ text, index }) => ({ text, index, jig }))),
    ({ text }) => text,
  );
  const aids = new Map(
    order.map(({ fastenings, needs: { text, corners } }) => [
      fastenings[0]?.places,
      (guides.get(text) ?? []).flatMap(({ index, jig }) => {
        const need = corners[index];
        return need === undefined ? [] : [aidFor(need, jig)];
      }),
    ]),
  );
  return ({ places }) => aids.get(places) ?? [];
}

/** The last aid of each need, so that what drawers use stays the same object while the guide does. */
const kept = new WeakMap<CornerNeed, Aid>();

function aidFor(need: CornerNeed, jig: Jig): Aid {
  const before = kept.get(need);
  if (before?.jig === jig) return before;
  const { corner, places, beyond } = need;
  const words = [...firstBoresWords(need, jig), ...beyondWords(need, jig)];
  const aid = { jig, corner, places, beyond, words };
  kept.set(need, aid);
  return aid;
}

/** Whether a guide pays: one that leans always does, for nothing else holds a bit at an angle. */
function isWorthAGuide(group: readonly GuideCorner[], fewest: number): boolean {
  const drawers = group.reduce((sum, corner) => sum + corner.drawers, 0);
  return drawers >= fewest || group.some(({ setup }) => setup.places.some(leans));
}

const leans = ({ slope }: GuidePlace): boolean => slope.x !== 0 || slope.y !== 0;

/**
 * Groups of corners with each that needs only the first bores of another's guide taken into that one, as far as
 * the guide then still fits all of their boxes. The host's corner comes first.
 */
function joined(
  groups: readonly (readonly GuideCorner[])[],
  keysOf: BoreKeys,
  kind: AidKind<GuideSetup>,
  context: BuildContext,
): readonly (readonly GuideCorner[])[] {
  const hosts: GuideCorner[][] = [];
  /** By hand and the bores that a host begins with. */
  const beginning = new Map<string, GuideCorner[][]>();
  const most = ([first]: readonly GuideCorner[]): number => first?.setup.places.length ?? 0;
  for (const group of groups.toSorted((a, b) => most(b) - most(a))) {
    const [guest] = group;
    if (guest === undefined) continue;
    const keys = keysOf(guest).map((key) => `${key} ${guest.setup.hand}`);
    const fitting = beginning
      .get(keys.at(-1) ?? '')
      ?.find((host) => kind.refuses(setupFor([...host, ...group]), context) === null);
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

/** Of a corner: what names its first bore, its first two, and so on to all of them, but for the hand. */
type BoreKeys = (corner: GuideCorner) => readonly string[];

/** Bores that lie within a tolerance have the same name. */
function boreKeys(corners: readonly GuideCorner[]): BoreKeys {
  const classOf = nearClasses(
    corners.flatMap(({ setup }) => boreNumbers(setup)),
    SAME_OVERHANG,
  );
  const known = new Map<GuideCorner, readonly string[]>();
  return (corner) => {
    const found = known.get(corner);
    if (found !== undefined) return found;
    const { end, bit, bore, places } = corner.setup;
    let key = `${end}|${classOf(bit)}|${classOf(bore)}`;
    const keys = places.map((place) => {
      for (const number of placeNumbers(place)) key += `|${classOf(number)}`;
      return key;
    });
    known.set(corner, keys);
    return keys;
  };
}

/** The one set-up that serves all of a group, with the first one's bores. */
function setupFor(group: readonly GuideCorner[]): GuideSetup {
  const setups = group.map(({ setup }) => setup);
  const [first] = setups;
  if (first === undefined) throw new RangeError('a guide needs a set-up');
  return {
    ...strictest(first, setups),
    screws: [...new Set(setups.flatMap(({ screws }) => screws))],
    guided: Math.max(...setups.map(({ guided }) => guided)),
  };
}

function firstBoresWords({ places }: CornerNeed, { id, drilling }: Jig): readonly string[] {
  const bores = drilling?.bores.length ?? 0;
  if (places.length >= bores) return [];
  const used = places.length === 1 ? 'bore 1 only' : `bores 1 to ${places.length} only`;
  return [`Of ${id}, use ${used}.`];
}

function beyondWords({ beyond }: CornerNeed, jig: Jig): readonly string[] {
  if (beyond.length === 0) return [];
  return [
    `${jig.id} does not reach ${beyond.map(placeName).join(', ')}: mark ${beyond.length === 1 ? 'it' : 'them'} from the drawer's template.`,
  ];
}

/** Told of each drawer by itself, so that each row shows it. */
function refusals({ fastenings, needs }: AlikeDrawers): readonly Finding[] {
  return needs.corners.flatMap(({ corner, places, refusal }) =>
    refusal === null
      ? []
      : fastenings.map(({ fit: { drawer } }) => {
          const name = drawerName(drawer);
          return warning(
            'jigs/no-guide',
            `No drill guide can be made for the ${corner.hand} ${corner.end} corner of ${name}: ${refusal}. Mark its ${places.length === 1 ? 'screw' : `${places.length} screws`} from the drawer's template.`,
            { ...(drawer.row > 0 ? { row: drawer.row } : {}), drawer: name },
            { hand: corner.hand, end: corner.end },
          );
        }),
  );
}
