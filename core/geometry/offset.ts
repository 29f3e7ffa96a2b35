import type { Outcome } from '../findings/finding.ts';
import { CONTOUR_ERROR, SAME_LENGTH, SHORTEST_SEGMENT } from '../units/tolerances.ts';
import { chainOf, type Chain } from './chain.ts';
import { clipChains } from './clip.ts';
import { distanceTo } from './nearest.ts';
import { offsetApproximate, offsetFailed, offsetVanished } from './offset-findings.ts';
import { rawOffset } from './offset-raw.ts';
import { counterClockwise, reverseRing } from './orient.ts';
import { polyline } from './polyline.ts';
import { rebuild } from './rebuild.ts';
import { isSplinter, strays } from './result-check.ts';
import { segmentsOf, type Segment } from './segments.ts';
import { pointThatDeep } from './thickness.ts';
import type { CircleContour, ClosedContour, Point, RingContour } from './types.ts';
import { contourProblems } from './validate.ts';

type Offset = Outcome<readonly ClosedContour[]>;

/**
 * What is tried in turn, in mm: how finely arcs are flattened to find the topology, and by how much the size of
 * the offset is off. A finer look settles doubtful crossings. Where the exact offset touches itself, as it does
 * when a neck is exactly twice the distance wide, a size within the allowed error of it does not; the smaller one
 * first, for that keeps the outline in one piece.
 */
const ATTEMPTS = [
  { flatness: 0.0005, off: 0 },
  { flatness: 0.0001, off: 0 },
  { flatness: 0.0005, off: -0.0003 },
  { flatness: 0.0005, off: 0.0003 },
] as const;

/**
 * All points within `distance` mm of a closed outline's area (or, below 0, all points deeper in it than that):
 * exact lines and arcs, corners rounded by arcs of that radius.
 *
 *     offsetContour(rectangle(100, 40), 3)   // 4 lines and 4 quarter arcs
 *     offsetContour(circle(p, 3), -0.1)      // circle(p, 2.9)
 *
 * The outline may run either way round; the result's outer rings run counter-clockwise, holes that a growing
 * outline closes in run clockwise. Findings: `geometry/offset-vanished` (warning) if the part is no wider than
 * twice the distance, so that nothing is left; `geometry/offset-failed` (error) if there should be something;
 * `geometry/offset-approximate` (warning) if the result had to stay fine polylines.
 */
export function offsetContour(contour: ClosedContour, distance: number): Offset {
  if (!Number.isFinite(distance)) throw new RangeError(`offsetContour: the distance is ${distance}`);
  if (contour.kind === 'circle') return offsetCircle(contour, distance);
  const ring = counterClockwise<RingContour>(contour);
  if (Math.abs(distance) < SAME_LENGTH) return { value: [ring], findings: [] };
  const source = segmentsOf(distance > 0 ? ring : reverseRing(ring));
  const away = distanceTo(source);
  const errorAt = (point: Point): number => Math.abs(away(point) - Math.abs(distance));
  let rough: readonly Chain[] = [];
  for (const attempt of ATTEMPTS) {
    const { chains, exact } = offsetOnce(source, distance, attempt);
    if (exact?.length === 0 && isThin(source, distance)) {
      return { value: [], findings: [offsetVanished(distance)] };
    }
    if (exact !== null && exact.length > 0 && strays(exact, errorAt) <= CONTOUR_ERROR) {
      return { value: exact, findings: [] };
    }
    if (rough.length === 0) rough = chains;
  }
  const value = rough.map(polyline);
  return value.length > 0 && strays(value, errorAt) <= CONTOUR_ERROR
    ? { value, findings: [offsetApproximate(distance)] }
    : { value: [], findings: [offsetFailed(distance)] };
}

function offsetCircle({ center, radius }: CircleContour, distance: number): Offset {
  const grown = radius + distance;
  return grown < SHORTEST_SEGMENT
    ? { value: [], findings: [offsetVanished(distance)] }
    : { value: [{ kind: 'circle', center, radius: grown }], findings: [] };
}

/** One look at an offset: the rough rings, and the exact ones unless any of them makes no sense. */
function offsetOnce(
  source: readonly Segment[],
  distance: number,
  { flatness, off }: (typeof ATTEMPTS)[number],
): { readonly chains: readonly Chain[]; readonly exact: readonly ClosedContour[] | null } {
  const pieces = rawOffset(source, Math.abs(distance) + off);
  const found = clipChains({
    operation: 'union',
    // Shrinking works on the outline turned clockwise: inside it the winding is -1 until the raw offset fills it.
    rule: distance > 0 ? 'positive' : 'negative',
    subject: [chainOf(pieces, 0, flatness)],
    clip: [],
    pieces,
  });
  if (found === null) return { chains: [], exact: null };
  const chains = found.filter((chain) => !isSplinter(chain));
  const rebuilt = chains.map((chain) => rebuild(chain, pieces)).filter((contours) => contours !== null);
  const exact = rebuilt.flat();
  const sound =
    rebuilt.length === chains.length && exact.every((contour) => contourProblems(contour).length === 0);
  return { chains, exact: sound ? exact : null };
}

/** Whether an empty answer is true: proof that no point of the part is deep enough. */
const isThin = (source: readonly Segment[], distance: number): boolean =>
  distance < 0 && pointThatDeep(source, -distance + 2 * CONTOUR_ERROR, CONTOUR_ERROR) === null;
