import { SAME_LENGTH } from '../../units/tolerances.ts';
import type { CurvePoint } from '../cover/types.ts';

/** A bargain over several plans, and how many jigs each of them gets. */
export interface JoinedPoint extends CurvePoint {
  readonly of: readonly number[];
}

/**
 * The best bargains of plans taken together: for each number of jigs the least adjustment, the jigs given to
 * where they save most. Exact where the curves are. Each point has less adjustment than the one before.
 */
export function joinPoints(curves: readonly (readonly CurvePoint[])[]): readonly JoinedPoint[] {
  let joined: readonly JoinedPoint[] = [{ jigs: 0, total: 0, largest: 0, of: [] }];
  for (const curve of curves) {
    const best = new Map<number, JoinedPoint>();
    for (const before of joined) {
      for (const { jigs, total, largest } of curve) {
        const point: JoinedPoint = {
          jigs: before.jigs + jigs,
          total: before.total + total,
          largest: Math.max(before.largest, largest),
          of: [...before.of, jigs],
        };
        const known = best.get(point.jigs);
        if (known === undefined || point.total < known.total) best.set(point.jigs, point);
      }
    }
    joined = falling([...best.values()].toSorted((a, b) => a.jigs - b.jigs));
  }
  return joined;
}

/** Without points that take more jigs and save nothing. */
function falling(points: readonly JoinedPoint[]): readonly JoinedPoint[] {
  const kept: JoinedPoint[] = [];
  for (const point of points) {
    if (point.total < (kept.at(-1)?.total ?? Infinity) - SAME_LENGTH) kept.push(point);
  }
  return kept;
}
