import { gapPlaces, type FrontCorner } from '../fit/budget/places.ts';
import { readingAt } from '../fit/dial-in/readings.ts';
import type { DialIn, SeenGaps } from '../fit/dial-in/types.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Edge } from '../order/types.ts';

/** A gap that was read and what the moves make of it, mm. */
export interface DialRow {
  readonly edge: Edge;
  readonly corner: FrontCorner;
  readonly seen: number;
  readonly after: number;
  readonly wanted: number;
}

/** The gaps that were read, one by one; those of an edge that laps are left out. */
export const dialTable = (fit: DrawerFit, seen: SeenGaps, { after }: DialIn): readonly DialRow[] =>
  gapPlaces(fit).flatMap(({ edge, corner }): readonly DialRow[] => {
    const at = readingAt({ edge });
    const [read, then, wanted] = [seen[corner]?.[at], after[corner]?.[at], fit.gaps[edge]];
    if (read === undefined || then === undefined || wanted === null) return [];
    return [{ edge, corner, seen: read, after: then, wanted }];
  });
