import { groupBy } from '../../collections/group-by.ts';
import { nearClasses } from '../../collections/near-classes.ts';
import { placeName } from '../../fastening/place-name.ts';
import type { Fastening } from '../../fastening/types.ts';
import type { Finding } from '../../findings/finding.ts';
import { warning } from '../../findings/make.ts';
import { drawerName } from '../../fit/name.ts';
import type { ShopStandard } from '../../rules/types.ts';
import { SAME_OVERHANG, sameLength } from '../../units/tolerances.ts';
import type { BuildContext, Jig } from '../types.ts';
import { guideNeeds, type GuideNeed } from './guide-setups.ts';
import type { AidUse } from './plan-types.ts';
import type { AidKind, GuidePlace, GuideSetup } from './types.ts';

interface PlannedAids {
  readonly jigs: readonly Jig[];
  readonly uses: readonly AidUse[];
  readonly findings: readonly Finding[];
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
  kind: AidKind<GuideSetup>,
  fewest: number,
): PlannedAids {
  const needs = fastenings.flatMap((fastening) => guideNeeds(fastening, standard));
  const keyOf = guideKeys(needs.map(({ setup }) => setup));
  const findings: Finding[] = [];
  const served = needs.filter((need) => {
    const refusal = kind.refuses(need.setup, context);
    if (refusal !== null) findings.push(noGuide(need, refusal));
    return refusal === null;
  });
  const alike = [...groupBy(served, ({ setup }) => `${keyOf(setup)} ${setup.hand}`).values()];
  const groups = joined(alike, kind, context).filter((group) => isWorthAGuide(group, fewest));
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
      return { group, jig: kind.build(id, strictest(group.map(({ setup }) => setup)), context) };
    });
  return {
    jigs: built.map(({ jig }) => jig),
    uses: built.flatMap(({ group, jig }) =>
      group.map((need): AidUse => ({
        fit: need.fastening.fit,
        jig,
        corner: need.corner,
        places: need.places,
        beyond: need.beyond,
        words: [...firstBoresWords(need, jig), ...beyondWords(need, jig)],
      })),
    ),
    findings,
  };
}

/** Whether a guide pays: one that leans always does, for nothing else holds a bit at an angle. */
function isWorthAGuide(group: readonly GuideNeed[], fewest: number): boolean {
  const drawers = group.reduce((sum, { fastening }) => sum + fastening.fit.drawer.qty, 0);
  return drawers >= fewest || group.some(({ setup }) => setup.places.some(leans));
}

const leans = ({ slope }: GuidePlace): boolean => slope.x !== 0 || slope.y !== 0;

/**
 * Groups of corners with each that needs only the first bores of another's guide taken into that one, as far as
 * the guide then still fits all of their boxes. The host's need comes first.
 */
function joined(
  groups: readonly (readonly GuideNeed[])[],
  kind: AidKind<GuideSetup>,
  context: BuildContext,
): readonly (readonly GuideNeed[])[] {
  const hosts: (readonly GuideNeed[])[] = [];
  const most = ([first]: readonly GuideNeed[]): number => first?.setup.places.length ?? 0;
  for (const group of groups.toSorted((a, b) => most(b) - most(a))) {
    const index = hosts.findIndex(([host]) => {
      const [guest] = group;
      if (host === undefined || guest === undefined || !isFirstOf(guest.setup, host.setup)) return false;
      return kind.refuses(strictest([host.setup, ...group.map(({ setup }) => setup)]), context) === null;
    });
    if (index === -1) hosts.push(group);
    else hosts[index] = [...(hosts[index] ?? []), ...group];
  }
  return hosts;
}

/** Whether a set-up asks for no more than the first bores of another. */
function isFirstOf(guest: GuideSetup, host: GuideSetup): boolean {
  const alike =
    guest.hand === host.hand && guest.end === host.end && guest.bit === host.bit && guest.bore === host.bore;
  return (
    alike &&
    guest.places.every((place, index) => {
      const other = host.places[index];
      return (
        other !== undefined && numbersOf(place).every((number, at) => near(number, numbersOf(other)[at]))
      );
    })
  );
}

const near = (a: number, b: number | undefined): boolean =>
  b !== undefined && sameLength(a, b, SAME_OVERHANG);

/** Where a bore is, and where its axis is farther up; mm. */
const numbersOf = ({ at, slope, depth }: GuidePlace): readonly number[] => [
  at.x,
  at.y,
  at.x + COMPARED_AT * slope.x,
  at.y + COMPARED_AT * slope.y,
  depth,
];

/** What two set-ups must share to share a guide, but for the hand. */
function guideKeys(setups: readonly GuideSetup[]): (setup: GuideSetup) => string {
  const allOf = ({ places, bit, bore }: GuideSetup): readonly number[] => [
    bit,
    bore,
    ...places.flatMap(numbersOf),
  ];
  const classOf = nearClasses(setups.flatMap(allOf), SAME_OVERHANG);
  return (setup) => [setup.end, ...allOf(setup).map(classOf)].join('|');
}

/** The one set-up that serves all of a group: the smallest room, the thinnest box front. */
function strictest(setups: readonly GuideSetup[]): GuideSetup {
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

function noGuide({ fastening, corner, places }: GuideNeed, refusal: string): Finding {
  const { drawer } = fastening.fit;
  const name = drawerName(drawer);
  return warning(
    'jigs/no-guide',
    `No drill guide can be made for the ${corner.hand} ${corner.end} corner of ${name}: ${refusal}. Mark its ${places.length === 1 ? 'screw' : `${places.length} screws`} from the drawer's template.`,
    { ...(drawer.row > 0 ? { row: drawer.row } : {}), drawer: name },
    { hand: corner.hand, end: corner.end },
  );
}
