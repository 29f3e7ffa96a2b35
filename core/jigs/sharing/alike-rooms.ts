import type { DrawerFit } from '../../fit/types.ts';
import { EDGES } from '../../order/types.ts';
import type { ShopStandard } from '../../rules/types.ts';
import { jigRoom, type JigRoom } from './jig-room.ts';

/** The room of a drawer's jigs, registered on a side. */
export type RoomOf = (fit: DrawerFit, registered: 'left' | 'right') => JigRoom;

/** Rooms under one standard, those of drawers that are alike worked out once. */
export function alikeRooms(standard: ShopStandard): RoomOf {
  const known = new Map<string, JigRoom>();
  return (fit, registered) => {
    const key = `${registered} ${roomKey(fit)}`;
    const room = known.get(key) ?? jigRoom(fit, standard, registered);
    known.set(key, room);
    return room;
  };
}

const keys = new WeakMap<DrawerFit, string>();

/** The same for drawers whose jigs have the same room under one standard: all of a fit that `jigRoom` reads. */
export function roomKey(fit: DrawerFit): string {
  const known = keys.get(fit);
  if (known !== undefined) return known;
  const { overhang, frontW, frontH, boxW, boxH, runningClearance, gaps, drawer, rules } = fit;
  const key = JSON.stringify([
    [frontW, frontH, boxW, boxH, runningClearance, drawer.openingW, rules.slideName, rules.startLow.value],
    EDGES.map((edge) => {
      const { condition, overlay } = rules.edges[edge];
      return [overhang[edge], gaps[edge], condition.kind, 'gap' in condition ? condition.gap : null, overlay];
    }),
  ]);
  keys.set(fit, key);
  return key;
}
