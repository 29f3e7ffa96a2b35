import type { Box } from '../page/types.ts';
import { findClear, findRoom } from './find-place.ts';

/** How much smaller than its full size a block may be drawn, the best first. */
const SCALES = [1, 0.85, 0.72, 0.6, 0.5, 0.42] as const;

/** mm. From one place that is tried to the next. */
const STEP = 6;

export interface Placed {
  readonly box: Box;
  readonly scale: number;
}

/**
 * As large as possible, the place for a block in a region that is clear of obstacles, from a side of the region
 * on: within one of the rooms if it can be, and otherwise across them.
 */
export function placeBlock(
  size: Size,
  region: Box,
  obstacles: readonly Box[],
  rooms: readonly Box[],
  from: 'left' | 'right' = 'left',
): Placed | null {
  const find = (place: (candidates: readonly Box[]) => Box | undefined): Placed | null => {
    for (const scale of SCALES) {
      const box = place(candidatesFor({ w: size.w * scale, h: size.h * scale }, region, from));
      if (box !== undefined) return { box, scale };
    }
    return null;
  };
  return (
    find((candidates) => findRoom(candidates, obstacles, rooms)) ??
    find((candidates) => findClear(candidates, obstacles))
  );
}

interface Size {
  readonly w: number;
  readonly h: number;
}

/** Places column by column from a side of the region, in each the nearest to the middle of its height first. */
function candidatesFor({ w, h }: Size, region: Box, from: 'left' | 'right'): readonly Box[] {
  const [spareX, spareY] = [region.w - w, region.h - h];
  if (spareX < 0 || spareY < 0) return [];
  const across = steps(spareX).map((x) => (from === 'left' ? x : spareX - x));
  const off = (y: number) => Math.abs(y - spareY / 2);
  const heights = [...steps(spareY), spareY / 2].sort((a, b) => off(a) - off(b) || a - b);
  return across.flatMap((x) => heights.map((y) => ({ x: region.x + x, y: region.y + y, w, h })));
}

const steps = (length: number): readonly number[] =>
  Array.from({ length: Math.floor(length / STEP) + 1 }, (_, index) => index * STEP);
