import { fallsShort } from '../../fit/budget/falls-short.ts';
import { budgetModel, type BudgetModel } from '../../fit/budget/model.ts';
import { gapGrowth, type Move } from '../../fit/budget/places.ts';
import { boundGroups } from '../../fit/budget/reach-lines.ts';
import { leastSlack } from '../../fit/budget/least-slack.ts';
import { setSpread } from '../../fit/budget/set-spread.ts';
import type { RegisteredSide } from '../../fit/budget/start-move.ts';
import { combinations, constantOf, growthOf, type Combination } from '../../fit/budget/tight-sets.ts';
import type { DrawerFit } from '../../fit/types.ts';
import type { Edge } from '../../order/types.ts';
import type { ShopStandard } from '../../rules/types.ts';
import { lapRoom, type Room } from './lap-room.ts';
import { shiftFit, type Deviation } from './shift-fit.ts';

/** How far the jig at the side and the one at the bottom may be off, each whatever the other does. */
export interface JigRoom {
  readonly side: Room;
  readonly bottom: Room;
}

const NONE: Room = { less: 0, more: 0 };

/** mm per mm. Less is float noise. */
const NO_EFFECT = 1e-9;

/**
 * How far a drawer's jigs may be off so that its adjusters still bring the front in at three standard deviations.
 *
 * Why it is right: an overhang that is off by d moves the front as an error of the jig by d does, and that error
 * is in the budget's model. Every set of limits that can fail (`tightSets`) has a slack that is linear in it,
 *
 *     slack(side, bottom) = constant + a side + b bottom - what tolerances are likely to take (root sum square)
 *
 * and the adjusters reach when no slack is below 0, so each set bounds the side by -slack(0, 0) / a, on the side
 * to which it falls. Of a set that both jigs tighten (a turn eases one gap at the cost of another) each may take
 * half of the slack, or what the other leaves at its most, so that they never need to know of one another. The
 * limits hold the adjusters' ends with their signs: a bottom jig may hang the front lower by what the height
 * adjuster has left, and higher only as far as it still has nothing to lower. Edges that lap have no such limit; see `lapRoom`.
 *
 * The lever arms of a turn change a little with the overhang, which the linear model leaves out; so the corners
 * of the result are tried on the budget itself, and drawn in where they fail. A drawer that its own jig does not
 * bring in has no room.
 */
export function jigRoom(fit: DrawerFit, standard: ShopStandard, registered: RegisteredSide): JigRoom {
  const model = budgetModel(fit, standard, { registered });
  const outward = registered === 'left' ? -1 : 1;
  const tolerance = standard.limits.sizeDifference.value;
  const laps = (edge: Edge, rises: boolean): Room =>
    lapRoom(edge, model, tolerance, rises) ?? { less: Infinity, more: Infinity };
  const room = roomOf(model, outward, {
    side: narrower(laps('left', outward < 0), laps('right', outward < 0)),
    bottom: narrower(laps('bottom', true), laps('top', true)),
  });
  if (room === null) return { side: NONE, bottom: NONE };
  const { own, ...most } = room;
  return drawnIn(most, own, (by) =>
    leastSlack(budgetModel(shiftFit(fit, registered, by), standard, { registered }), 0),
  );
}

const narrower = (a: Room, b: Room): Room => ({
  less: Math.min(a.less, b.less),
  more: Math.min(a.more, b.more),
});

/** What gaps and laps leave, in the linear model, and the least slack of the drawer's own jigs; null where not even the drawer's own jigs keep all gaps. */
function roomOf(
  model: BudgetModel,
  outward: 1 | -1,
  laps: JigRoom,
): (JigRoom & { readonly own: number }) | null {
  const jigs: readonly Move[] = [
    { side: outward, heightLeft: 0, heightRight: 0 },
    { side: 0, heightLeft: -1, heightRight: -1 },
  ];
  const deviations = jigs.map((moves) => ({
    source: 'jig' as const,
    what: 'overhang of another drawer',
    tolerance: { value: 0, source: '', distribution: 'normal' as const },
    moves,
    opens: {},
    leans: 0,
  }));
  const first = model.errors.length;
  const sets = slacksOf({
    ...model,
    errors: [...model.errors, ...deviations],
    places: model.places.map((place) => ({
      ...place,
      byError: [...place.byError, ...jigs.map((moves) => gapGrowth(place, moves))],
    })),
  });
  const own = sets.reduce((least, { slack }) => Math.min(least, slack), Infinity);
  if (fallsShort(own)) return null;
  const limits = sets.map(({ slack, set }): Limit => ({
    slack: Math.max(0, slack),
    side: effectOf(growthOf(set, first)),
    bottom: effectOf(growthOf(set, first + 1)),
  }));
  const alone = limits.filter(({ side, bottom }) => side === 0 || bottom === 0);
  const most = (axis: keyof JigRoom, lap: Room): Room => {
    const far = (sign: 1 | -1) =>
      alone.flatMap((limit) => (sign * limit[axis] > 0 ? [limit.slack / Math.abs(limit[axis])] : []));
    return { less: Math.min(lap.less, ...far(1)), more: Math.min(lap.more, ...far(-1)) };
  };
  const room = { side: most('side', laps.side), bottom: most('bottom', laps.bottom) };
  const shared = limits.filter(({ side, bottom }) => side !== 0 && bottom !== 0);
  return {
    own,
    side: clipped('side', 'bottom', room, shared),
    bottom: clipped('bottom', 'side', room, shared),
  };
}

/** A set of limits that can fail: what is left of it, and how much more with each mm that a jig is off. */
interface Limit {
  readonly slack: number;
  readonly side: number;
  readonly bottom: number;
}

const effectOf = (growth: number): number => (Math.abs(growth) <= NO_EFFECT ? 0 : growth);

/** The room on one axis so that no limit fails that the other axis uses too, however much of its own that takes. */
function clipped(axis: keyof JigRoom, other: keyof JigRoom, room: JigRoom, limits: readonly Limit[]): Room {
  let { less, more } = room[axis];
  for (const limit of limits) {
    const own = Math.abs(limit[axis]);
    const taken = Math.abs(limit[other]) * room[other][limit[other] > 0 ? 'less' : 'more'];
    const far = Math.max(limit.slack / 2, limit.slack - taken) / own;
    if (limit[axis] > 0) less = Math.min(less, far);
    else more = Math.min(more, far);
  }
  return { less, more };
}

function slacksOf(model: BudgetModel): readonly { readonly set: Combination; readonly slack: number }[] {
  const spreadOf = setSpread(model.errors.map(({ tolerance }) => tolerance));
  return combinations(boundGroups(model)).map((set) => ({
    set,
    slack: constantOf(set) - spreadOf(set).likely,
  }));
}

/** Tries before giving up: each takes a third or more of what is wrong, as slacks are all but linear. */
const TRIES = 12;

/** The room made smaller all round until its four corners hold; `slackAt` is 0 where they do. */
function drawnIn(room: JigRoom, own: number, slackAt: (by: Deviation) => number): JigRoom {
  let scale = 1;
  for (let tries = 0; tries < TRIES; tries += 1) {
    const tried = scaled(room, scale);
    const slack = Math.min(...cornersOf(tried).map(slackAt));
    if (!fallsShort(slack)) return tried;
    // Where the straight line between the two is 0; a little less, for what is left of the curve.
    scale *= own <= 0 ? 0 : (own / (own - slack)) * 0.999;
  }
  return { side: NONE, bottom: NONE };
}

const scaled = ({ side, bottom }: JigRoom, by: number): JigRoom => ({
  side: { less: side.less * by, more: side.more * by },
  bottom: { less: bottom.less * by, more: bottom.more * by },
});

const cornersOf = ({ side, bottom }: JigRoom): readonly Deviation[] =>
  [-side.less, side.more].flatMap((s) => [-bottom.less, bottom.more].map((b) => ({ side: s, bottom: b })));
