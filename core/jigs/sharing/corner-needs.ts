import { groupBy } from '../../collections/group-by.ts';
import type { DrawerFit } from '../../fit/types.ts';
import type { CornerNeed } from '../cover/types.ts';
import type { PlanKinds } from '../plan-types.ts';
import { bevelKey, setupOf } from '../requirements.ts';
import type { BuildContext, Setup } from '../types.ts';
import { roomKey, type RoomOf } from './alike-rooms.ts';
import type { Line } from './edge-needs.ts';
import { overhangRange } from './overhang-range.ts';

/** Corners of one hand that may share fences, all of one bevel. */
export interface CornerClass {
  readonly place: 'left corner' | 'right corner';
  /** Their ids are places in the list of fits. */
  readonly needs: readonly CornerNeed[];
}

/**
 * What the lower corners of drawers that get corner fences need: each hand by itself, as if it alone set the
 * drawer. A range is given up to the wanted overhang where the fence refuses a corner of the two ranges.
 */
export function cornerClasses(
  lines: readonly Line[],
  roomOf: RoomOf,
  context: BuildContext,
  { cornerFence }: PlanKinds,
): readonly CornerClass[] {
  return (['left', 'right'] as const).flatMap((hand) => {
    const rangesOf = (fit: DrawerFit, bottom: Setup, side: Setup): Pick<CornerNeed, 'bottom' | 'side'> => {
      const room = roomOf(fit, hand);
      const refuses = (low: number, wide: number): boolean =>
        cornerFence.refuses(
          [
            { ...bottom, overhang: low },
            { ...side, overhang: wide },
          ],
          context,
        ) !== null;
      const low = overhangRange(
        bottom.overhang,
        room.bottom,
        cornerFence,
        (overhang) => refuses(overhang, side.overhang),
        'bottomOverhang',
      );
      const wide = overhangRange(
        side.overhang,
        room.side,
        cornerFence,
        (overhang) => low.interval.some((other) => refuses(other, overhang)),
        'sideOverhang',
      );
      return { bottom: low, side: wide };
    };
    const alike = new Map<string, ReturnType<typeof rangesOf>>();
    const needs = lines.map(({ fit, place }) => {
      const [bottom, side] = [setupOf(fit, 'bottom'), setupOf(fit, hand)];
      const key = `${roomKey(fit)} ${JSON.stringify([bottom, side])}`;
      const ranges = alike.get(key) ?? rangesOf(fit, bottom, side);
      alike.set(key, ranges);
      const need: CornerNeed = { id: `${place}`, weight: fit.drawer.qty, ...ranges };
      return { need, key: `${bevelKey(bottom)} ${bevelKey(side)}` };
    });
    return [...groupBy(needs, ({ key }) => key).values()].map((group): CornerClass => ({
      place: `${hand} corner`,
      needs: group.map(({ need }) => need),
    }));
  });
}
