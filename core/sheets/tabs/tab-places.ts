import { lengthOf } from '../../geometry/measure.ts';
import { directionAt, pointAt, segmentsOf } from '../../geometry/segments.ts';
import type { RingContour } from '../../geometry/types.ts';
import type { TabPlace, TabSettings } from './types.ts';

/** Fewer would let a part swing. */
export const LEAST_TABS = 2;

/** A stretch of the outline on which the middle of a tab may lie, in mm from the outline's start. */
interface Stretch {
  readonly segment: number;
  /** Where the segment starts. */
  readonly origin: number;
  readonly from: number;
  readonly to: number;
}

/** What a tab takes of the outline: its own width, and half a cut on either side. */
export const tabLength = ({ width, kerf }: TabSettings): number => width + kerf;

/**
 * Where the tabs of an outline go: evenly round it, each moved to the nearest straight stretch that keeps it away
 * from corners; two at least if there is room for them, and one for each `every` mm.
 */
export function tabPlaces(outline: RingContour, settings: TabSettings): readonly TabPlace[] {
  const segments = segmentsOf(outline);
  const stretches: Stretch[] = [];
  const margin = settings.fromCorner + tabLength(settings) / 2;
  let length = 0;
  for (const [index, segment] of segments.entries()) {
    const own = lengthOf(segment);
    if (segment.kind === 'line' && own >= 2 * margin) {
      stretches.push({ segment: index, origin: length, from: length + margin, to: length + own - margin });
    }
    length += own;
  }
  const wanted = Math.max(LEAST_TABS, Math.ceil(length / settings.every));
  const apart = Math.max(2 * tabLength(settings), Math.min(length / wanted, settings.every) / 2);
  return bestStart(stretches, length, wanted, apart).flatMap(
    ({ segment: index, along }): readonly TabPlace[] => {
      const segment = segments[index];
      if (segment === undefined) return [];
      return [
        {
          segment: index,
          along,
          at: pointAt(segment, along / lengthOf(segment)),
          direction: directionAt(segment, 0),
        },
      ];
    },
  );
}

type Found = Pick<TabPlace, 'segment' | 'along'>;

/** Of tabs that start at the middle of each stretch, those that are most, and then moved least. */
function bestStart(
  stretches: readonly Stretch[],
  length: number,
  wanted: number,
  apart: number,
): readonly Found[] {
  let best: { readonly found: readonly Found[]; readonly moved: number } = { found: [], moved: Infinity };
  for (const { from, to } of stretches) {
    const next = evenly(stretches, length, wanted, apart, (from + to) / 2);
    const more = next.found.length - best.found.length;
    if (more > 0 || (more === 0 && next.moved < best.moved)) best = next;
  }
  return best.found;
}

function evenly(
  stretches: readonly Stretch[],
  length: number,
  wanted: number,
  apart: number,
  start: number,
): { readonly found: readonly Found[]; readonly moved: number } {
  const places: number[] = [];
  const found: Found[] = [];
  let moved = 0;
  for (let number = 0; number < wanted; number += 1) {
    const ideal = (start + (number * length) / wanted) % length;
    let nearest: { readonly stretch: Stretch; readonly at: number; readonly off: number } | null = null;
    for (const stretch of stretches) {
      for (const at of choices(stretch, ideal, length)) {
        const off = aroundGap(at, ideal, length);
        const clear = places.every((other) => aroundGap(at, other, length) >= apart);
        if (clear && (nearest === null || off < nearest.off)) nearest = { stretch, at, off };
      }
    }
    if (nearest === null) continue;
    places.push(nearest.at);
    moved += nearest.off;
    found.push({ segment: nearest.stretch.segment, along: nearest.at - nearest.stretch.origin });
  }
  return { found, moved };
}

/** The place of a stretch nearest to the ideal one, and its ends, should that be taken. */
const choices = ({ from, to }: Stretch, ideal: number, length: number): readonly number[] =>
  [ideal - length, ideal, ideal + length].filter((at) => at >= from && at <= to).concat([from, to]);

/** Way from one place of a closed line to another, the shorter way round. */
function aroundGap(a: number, b: number, length: number): number {
  const way = Math.abs(a - b) % length;
  return Math.min(way, length - way);
}
