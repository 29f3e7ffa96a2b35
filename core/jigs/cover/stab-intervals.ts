import { components } from './components.ts';
import { planOf } from './cover-plan.ts';
import { demandsOf } from './demand.ts';
import { edgeCurve } from './edge-curve.ts';
import { joinCurves } from './join-curves.ts';
import { toNanometres } from './nanometres.ts';
import { roundCover } from './round-cover.ts';
import type { CoverOptions, CoverPlan, Need } from './types.ts';

/**
 * The fewest jigs that serve all of these edges and, among plans of so many, the least total adjustment; with
 * the whole curve of jigs against adjustment. Exact, without a solver. A jig's overhang lies in the interval of
 * each drawer that it serves, within SAME_LENGTH; ends count.
 *
 *     stabIntervals([
 *       { id: 'a', weight: 1, interval: [9, 11], wanted: 10 },
 *       { id: 'b', weight: 2, interval: [10, 12], wanted: 11 },
 *     ]).jigs  // one of 11 mm; a is adjusted by -1 mm
 */
export function stabIntervals(needs: readonly Need[], options: CoverOptions = {}): CoverPlan {
  const ranges = needs.map(({ id, weight, interval, wanted }) => ({
    id,
    weight,
    ranges: [{ interval, wanted }],
  }));
  const parts = components(demandsOf(ranges));
  const step = stepOf(options);
  return planOf(ranges, joinCurves(parts.map(edgeCurve)), {
    spend: options.spend,
    round: (cover) => roundCover(cover, step),
    boundOf: null,
  });
}

/** nm; 0 for none. */
export function stepOf({ step = 0 }: CoverOptions): number {
  const nm = toNanometres(step);
  if (!(step >= 0 && step < Infinity) || (step > 0 && nm === 0)) {
    throw new RangeError(`the step ${step} mm must be 0 for none, or a length of a nanometre or more`);
  }
  return nm;
}
