import type { Finding } from '../findings/finding.ts';
import { warning } from '../findings/make.ts';
import { lengthOf } from '../geometry/measure.ts';
import { segmentsOf } from '../geometry/segments.ts';
import type { PathContour } from '../geometry/types.ts';
import type { Feature } from '../parts/types.ts';
import { roundTo } from '../units/tolerances.ts';
import { dropSegments } from './drop-segments.ts';
import { LEAST_OVERLAP } from './overlap.ts';
import { overlapsOf, type SegmentOverlap } from './overlaps.ts';

export interface Deduplicated {
  readonly features: readonly Feature[];
  /** Contours left out as a whole, and segments left out of open paths. */
  readonly removed: number;
  readonly findings: readonly Finding[];
}

/**
 * Features without what would be run twice (requirement DXF-6): a closed contour that lies wholly on an earlier one
 * of its operation and depth is left out, and so is a segment of an open path. What overlaps otherwise, such as the
 * edge that two outlines share, can't be left out without opening an outline; it is reported.
 */
export function withoutDuplicates(features: readonly Feature[]): Deduplicated {
  const overlaps = overlapsOf(features);
  const covered = coveredSegments(features, overlaps);
  const dropped = features.map((feature, index) => droppedOf(feature, covered.get(index)));
  const isDropped = ({ feature, index }: SegmentOverlap['later']): boolean =>
    dropped[feature]?.has(index) ?? false;
  const kept = overlaps.filter(({ earlier, later }) => !isDropped(earlier) && !isDropped(later));
  let removed = 0;
  const left = features.flatMap((feature, index): readonly Feature[] => {
    const gone = dropped[index];
    if (gone === undefined || gone.size === 0) return [feature];
    const { contour } = feature;
    removed += contour.kind === 'path' ? gone.size : 1;
    return contour.kind === 'path'
      ? dropSegments(contour, gone).map((rest) => withContour(feature, rest))
      : [];
  });
  return { features: left, removed, findings: reportOf(features, kept) };
}

const withContour = (feature: Feature, contour: PathContour): Feature => ({ ...feature, contour });

/** By feature and segment: the earlier features of the same depth that cover the whole segment. */
type Covered = ReadonlyMap<number, ReadonlyMap<number, ReadonlySet<number>>>;

function coveredSegments(features: readonly Feature[], overlaps: readonly SegmentOverlap[]): Covered {
  const lengths = new Map<string, number>();
  const covered = new Map<number, Map<number, Set<number>>>();
  for (const { earlier, later, overlap } of overlaps) {
    if (features[earlier.feature]?.depth !== features[later.feature]?.depth) continue;
    const key = `${later.feature} ${later.index} ${earlier.feature}`;
    const length = (lengths.get(key) ?? 0) + overlap.length;
    lengths.set(key, length);
    if (length < lengthOf(later.segment) - LEAST_OVERLAP) continue;
    const ofFeature = covered.get(later.feature) ?? new Map<number, Set<number>>();
    covered.set(later.feature, ofFeature);
    ofFeature.set(later.index, (ofFeature.get(later.index) ?? new Set<number>()).add(earlier.feature));
  }
  return covered;
}

/** The segments of a feature to leave out: of a path any that is covered, of a closed contour all or none. */
function droppedOf(
  { contour }: Feature,
  covered: ReadonlyMap<number, ReadonlySet<number>> | undefined,
): ReadonlySet<number> {
  if (covered === undefined) return new Set();
  if (contour.kind === 'path') return new Set(covered.keys());
  const all = segmentsOf(contour).map((_, index) => index);
  const first = covered.get(0) ?? new Set<number>();
  const oneCoversAll = [...first].some((other) => all.every((index) => covered.get(index)?.has(other)));
  return new Set(oneCoversAll ? all : []);
}

/** One warning for each two contours that still share a stretch. */
function reportOf(features: readonly Feature[], overlaps: readonly SegmentOverlap[]): readonly Finding[] {
  const byPair = new Map<string, SegmentOverlap[]>();
  for (const overlap of overlaps) {
    const key = `${overlap.earlier.feature} ${overlap.later.feature}`;
    byPair.set(key, [...(byPair.get(key) ?? []), overlap]);
  }
  return [...byPair.values()].flatMap((shared) => {
    const [first] = shared;
    if (first === undefined) return [];
    const length = roundTo(
      shared.reduce((sum, { overlap }) => sum + overlap.length, 0),
      3,
    );
    const [x, y] = [roundTo(first.overlap.middle.x, 3), roundTo(first.overlap.middle.y, 3)];
    const [a, b] = [first.earlier.feature, first.later.feature];
    const operation = features[a]?.operation ?? '';
    const who =
      a === b
        ? `Contour ${a + 1} (${operation}) runs over itself`
        : `Contours ${a + 1} and ${b + 1} (${operation}) run over each other`;
    return [
      warning(
        'files/overlap',
        `${who} for ${length} mm near (${x}, ${y}); the machine would run there twice.`,
        { field: `features.${b}` },
        { first: a, second: b, operation, length, x, y },
      ),
    ];
  });
}
