import { FRONT_CORNERS, gapGrowth } from '../budget/places.ts';
import { readingAt, type Readings } from './readings.ts';
import type { AdjusterSettings, CornerReading, SeenGaps } from './types.ts';

/** The readings as they will be after a move. */
export function gapsAfter({ gaps, proud }: Readings, move: AdjusterSettings): SeenGaps {
  const after = FRONT_CORNERS.map((corner): readonly [string, CornerReading] => {
    const ofGaps = gaps
      .filter((gap) => gap.corner === corner)
      .map((gap) => [readingAt(gap), gap.seen + gapGrowth(gap, move)] as const);
    const ofProud = proud
      .filter((one) => one.corner === corner)
      .map(({ seen }) => ['proud', seen + move.depth + (corner.startsWith('top') ? move.tilt : 0)] as const);
    return [corner, Object.fromEntries([...ofGaps, ...ofProud])];
  });
  return Object.fromEntries(after.filter(([, reading]) => Object.keys(reading).length > 0));
}

/** The largest difference between a gap and the one wanted after a move, mm; null where no gap was read. */
export function worstLeft({ gaps }: Readings, move: AdjusterSettings): number | null {
  if (gaps.length === 0) return null;
  return Math.max(...gaps.map((gap) => Math.abs(gap.seen + gapGrowth(gap, move) - gap.wanted)));
}
