import { boxPairs } from '../geometry/box-pairs.ts';
import { boundsOfSegment, type Bounds } from '../geometry/measure.ts';
import { segmentsOf, type Segment } from '../geometry/segments.ts';
import { OPERATIONS, type Operation } from '../machine/operations.ts';
import type { Feature } from '../parts/types.ts';
import { CONTOUR_ERROR } from '../units/tolerances.ts';
import { overlapOf, type Overlap } from './overlap.ts';

/** A segment with its feature's place and its own in it. */
export interface PlacedSegment {
  readonly feature: number;
  readonly index: number;
  readonly segment: Segment;
}

/** Two segments of one operation that run over each other, the earlier first. */
export interface SegmentOverlap {
  readonly earlier: PlacedSegment;
  readonly later: PlacedSegment;
  readonly overlap: Overlap;
}

/** All overlaps between segments of one operation, in the order of the features. */
export const overlapsOf = (features: readonly Feature[]): readonly SegmentOverlap[] =>
  OPERATIONS.flatMap((operation) => {
    const segments = placed(features, operation);
    const pairs = boxPairs(segments.map(({ segment }) => grown(boundsOfSegment(segment))));
    return pairs
      .toSorted(([a, b], [c, d]) => a - c || b - d)
      .flatMap(([first, second]) => {
        const [earlier, later] = [segments[first], segments[second]];
        if (earlier === undefined || later === undefined) return [];
        const overlap = overlapOf(earlier.segment, later.segment);
        return overlap === null ? [] : [{ earlier, later, overlap }];
      });
  });

const placed = (features: readonly Feature[], operation: Operation): readonly PlacedSegment[] =>
  features.flatMap(({ operation: own, contour }, feature) =>
    own === operation ? segmentsOf(contour).map((segment, index) => ({ feature, index, segment })) : [],
  );

/** Room for segments that coincide but for the error that contours may have. */
const grown = ({ min, max }: Bounds): Bounds => ({
  min: { x: min.x - CONTOUR_ERROR, y: min.y - CONTOUR_ERROR },
  max: { x: max.x + CONTOUR_ERROR, y: max.y + CONTOUR_ERROR },
});
