import { holds, overlaps } from '../page/boxes.ts';
import type { Box } from '../page/types.ts';

/**
 * The first of some boxes that is clear of all obstacles and within one of the rooms, which are the tiles, so
 * that no words are cut by the edge of a page.
 */
export const findRoom = (
  candidates: readonly Box[],
  obstacles: readonly Box[],
  rooms: readonly Box[],
): Box | undefined =>
  candidates.find((box) => rooms.some((room) => holds(room, box)) && isClear(box, obstacles));

/** The first of some boxes that is clear of all obstacles, wherever pages end. */
export const findClear = (candidates: readonly Box[], obstacles: readonly Box[]): Box | undefined =>
  candidates.find((box) => isClear(box, obstacles));

const isClear = (box: Box, obstacles: readonly Box[]): boolean =>
  !obstacles.some((obstacle) => overlaps(box, obstacle));
