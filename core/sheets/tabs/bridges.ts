import { lengthOf } from '../../geometry/measure.ts';
import { pathOf, pointAt, segmentsOf, type Segment } from '../../geometry/segments.ts';
import type { PathContour, RingContour } from '../../geometry/types.ts';
import { SHORTEST_SEGMENT } from '../../units/tolerances.ts';
import { tabLength } from './tab-places.ts';
import type { TabPlace, TabSettings } from './types.ts';

/**
 * An outline broken at each tab into open stretches. The gap is the tab's width and a cut wide, as the cut takes
 * half of itself off both ends of the wood that stays.
 */
export function bridgedOutline(
  outline: RingContour,
  places: readonly TabPlace[],
  settings: TabSettings,
): readonly PathContour[] {
  const half = tabLength(settings) / 2;
  const stretches: Segment[][] = [[]];
  for (const [index, segment] of segmentsOf(outline).entries()) {
    const own = places.filter((place) => place.segment === index).toSorted((a, b) => a.along - b.along);
    let from = 0;
    for (const { along } of own) {
      stretches.at(-1)?.push(...between(segment, from, along - half));
      stretches.push([]);
      from = along + half;
    }
    stretches.at(-1)?.push(...(from === 0 ? [segment] : between(segment, from, lengthOf(segment))));
  }
  // What comes after the last tab goes on with what came before the first.
  const [first = [], ...others] = stretches;
  const last = others.pop() ?? [];
  return [...others, [...last, ...first]].map(pathOf);
}

/** The piece of a straight segment between two places, mm from its start; none if too short to draw. */
function between(segment: Segment, from: number, to: number): readonly Segment[] {
  if (to - from < SHORTEST_SEGMENT) return [];
  const length = lengthOf(segment);
  return [{ kind: 'line', start: pointAt(segment, from / length), end: pointAt(segment, to / length) }];
}
