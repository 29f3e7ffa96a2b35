import { groupBy } from '../../collections/group-by.ts';
import type { DrawerFit } from '../../fit/types.ts';
import type { Range, SideNeed } from '../cover/types.ts';
import { CLEARLY_DIFFERENT } from '../kinds/side-spacer.ts';
import type { PlanKinds } from '../plan-types.ts';
import { bevelKey, setupOf } from '../requirements.ts';
import type { BuildContext, JigKind, Setup } from '../types.ts';
import { roomKey, type RoomOf } from './alike-rooms.ts';
import { overhangRange } from './overhang-range.ts';

/** A drawer of the order and its place in the list of fits. */
export interface Line {
  readonly fit: DrawerFit;
  readonly place: number;
}

/** Edges that may share jigs, all of one kind and of one bevel. */
export interface EdgeClass {
  readonly place: 'bottom' | 'side';
  /** Whether two of them may be set by the two widths of one block. */
  readonly blocks: boolean;
  /** Their ids are places in the list of fits. */
  readonly needs: readonly SideNeed[];
}

interface Sharer {
  readonly setup: Setup;
  readonly kind: JigKind;
  readonly need: SideNeed;
}

/** What a drawer's edge asks for; of drawers that are alike the same. */
interface Asked {
  readonly kind: JigKind;
  readonly range: Range;
  readonly alone: boolean;
}

/**
 * What the edges of drawers that get edge jigs need, parted into classes that can share. Never shared: bevels
 * that differ, fronts of different thickness on a bevel, and what the preferred kind refuses with what it
 * serves. Edges that no kind serves are left out: the plan tells of them.
 */
export function edgeClasses(
  lines: readonly Line[],
  sides: ReadonlyMap<DrawerFit, 'left' | 'right'>,
  roomOf: RoomOf,
  context: BuildContext,
  { bottomFence, sideSpacer, stepProfile }: PlanKinds,
): readonly EdgeClass[] {
  const classes = (place: EdgeClass['place'], preferred: JigKind): readonly EdgeClass[] => {
    const askOf = (fit: DrawerFit, side: 'left' | 'right', setup: Setup): Asked | null => {
      const kind = [preferred, stepProfile].find((one) => one.refuses([setup], context) === null);
      if (kind === undefined) return null;
      const range = overhangRange(
        setup.overhang,
        roomOf(fit, side)[place],
        kind,
        (overhang) => kind.refuses([{ ...setup, overhang }], context) !== null,
      );
      return { kind, range, alone: kind === sideSpacer && isAlone(setup, sideSpacer, context) };
    };
    const alike = new Map<string, Asked | null>();
    const sharers = lines.flatMap(({ fit, place: line }): readonly Sharer[] => {
      const side = sides.get(fit) ?? 'left';
      const setup = setupOf(fit, place === 'bottom' ? 'bottom' : side);
      const key = `${side} ${roomKey(fit)} ${JSON.stringify(setup)}`;
      const known = alike.get(key);
      const asked = known === undefined ? askOf(fit, side, setup) : known;
      alike.set(key, asked);
      if (asked === null) return [];
      const { kind, alone, range } = asked;
      return [{ setup, kind, need: { id: `${line}`, weight: fit.drawer.qty, alone, ...range } }];
    });
    const groups = groupBy(sharers, ({ setup, kind }) => `${kind.name} ${bevelKey(setup)}`);
    return [...groups.values()].map((group) => ({
      place,
      blocks: group.some(({ kind }) => kind === sideSpacer),
      needs: group.map(({ need }) => need),
    }));
  };
  return [...classes('bottom', bottomFence), ...classes('side', sideSpacer)];
}

/** Whether a block of two widths is refused for this side, whatever the other width. */
function isAlone(setup: Setup, sideSpacer: JigKind, context: BuildContext): boolean {
  const refusals = [-1, 1].map((sign) => {
    const other = { ...setup, overhang: setup.overhang + sign * (CLEARLY_DIFFERENT + 1) };
    return sideSpacer.refuses([setup, other], context);
  });
  return refusals.every((refusal) => refusal !== null);
}
