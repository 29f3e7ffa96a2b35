import type { Outcome } from '../../findings/finding.ts';
import type { ShopStandard, SlideAdjusters } from '../../rules/types.ts';
import { formatLength } from '../../units/format-length.ts';
import { SAME_LENGTH } from '../../units/tolerances.ts';
import { adjustersOf, rangeOf } from '../budget/adjusters.ts';
import type { Span } from '../budget/types.ts';
import { canHang } from '../can-hang.ts';
import type { DrawerFit } from '../types.ts';
import { gapsAfter, worstLeft } from './gaps-after.ts';
import { incurables } from './incurable.ts';
import { moveWords } from './move-words.ts';
import { notesOn } from './notes.ts';
import { readingsOf, type Readings } from './readings.ts';
import { inSteps } from './steps.ts';
import {
  ADJUSTER_OF,
  type AdjusterMove,
  type AdjusterName,
  type AdjusterSettings,
  type DialIn,
  type Incurable,
  type SeenGaps,
} from './types.ts';
import { wantedFlush, wantedMove } from './wanted-move.ts';

/**
 * Heights first, for a turn moves the sides; then the side; depth and tilt last, which leave the gaps alone
 * (common practice, no source).
 */
const ORDER: readonly AdjusterName[] = ['heightLeft', 'heightRight', 'side', 'depth', 'tilt'];

const AS_HUNG: AdjusterSettings = { heightLeft: 0, heightRight: 0, side: 0, depth: 0, tilt: 0 };

const ENDLESS: Span = { least: -Infinity, most: Infinity };

/**
 * From gaps read at a closed drawer, someone facing it: which adjuster to turn, which way and how far, what
 * will be left, and what no adjuster cures. A turned front is straightened by different heights at left and
 * right. `now` is where the adjusters stand; all at 0 where it is absent. The value is null
 * for a fit that has no box or no front.
 */
export function dialIn(
  seen: SeenGaps,
  fit: DrawerFit,
  standard: ShopStandard,
  now: AdjusterSettings = AS_HUNG,
): Outcome<DialIn | null> {
  if (!canHang(fit)) return { value: null, findings: [] };
  const { value: readings, findings } = readingsOf(seen, fit);
  const adjusters = adjustersOf(fit, standard);
  const room = each((name) => roomOf(name, adjusters, now));
  const exact = bestMove(readings, room);
  const stepped = each((name) => inSteps(exact[name], adjusters[ADJUSTER_OF[name]], room[name]));
  const moves = ORDER.flatMap((adjuster): readonly AdjusterMove[] => {
    const { by, steps } = stepped[adjuster];
    if (Math.abs(by) < SAME_LENGTH) return [];
    const words = moveWords(adjuster, stepped[adjuster], fit.unit);
    return [{ adjuster, by, exact: exact[adjuster], steps, words }];
  });
  const done = each((name) => stepped[name].by);
  return {
    value: {
      moves,
      after: gapsAfter(readings, done),
      left: worstLeft(readings, done),
      incurable: [...incurables(readings, fit), ...outOfRange(readings, room, fit)],
      notes: notesOn(readings),
    },
    findings,
  };
}

/** How far an adjuster can still go, down and up. One that stands outside of its range goes nowhere. */
function roomOf(name: AdjusterName, adjusters: SlideAdjusters, now: AdjusterSettings): Span {
  const { least, most } = rangeOf(adjusters, ADJUSTER_OF[name]);
  return { least: Math.min(0, least - now[name]), most: Math.max(0, most - now[name]) };
}

const bestMove = (readings: Readings, room: Readonly<Record<AdjusterName, Span>>): AdjusterSettings => ({
  ...wantedMove(readings, room),
  ...wantedFlush(readings, room),
});

/** Adjusters that would have to go further than they can. */
function outOfRange(
  readings: Readings,
  room: Readonly<Record<AdjusterName, Span>>,
  { unit }: DrawerFit,
): readonly Incurable[] {
  const free = bestMove(
    readings,
    each(() => ENDLESS),
  );
  return ORDER.flatMap((adjuster) => {
    const by = free[adjuster];
    const end = by > 0 ? room[adjuster].most : room[adjuster].least;
    const amount = Math.abs(by) - Math.abs(end);
    if (amount < SAME_LENGTH) return [];
    const mm = (value: number) => formatLength(Math.abs(value), unit);
    const wish = moveWords(adjuster, { by, steps: null }, unit).slice(0, -1);
    const has = Math.abs(end) < SAME_LENGTH ? 'the slide cannot' : `the slide has ${mm(end)} left`;
    return [
      {
        what: 'range' as const,
        amount,
        words: `${wish} is what it takes; ${has}. Loosen the screws and set the front ${mm(amount)} over, or shim the slide.`,
      },
    ];
  });
}

const each = <T>(of: (name: AdjusterName) => T): Record<AdjusterName, T> => ({
  heightLeft: of('heightLeft'),
  heightRight: of('heightRight'),
  side: of('side'),
  depth: of('depth'),
  tilt: of('tilt'),
});
