import { components } from './components.ts';
import { planOf } from './cover-plan.ts';
import { demandsOf } from './demand.ts';
import { joinBounds, joinCurves } from './join-curves.ts';
import { fewestCover, partCurve } from './part-curve.ts';
import { roundCover } from './round-cover.ts';
import { stepOf } from './stab-intervals.ts';
import type { CornerNeed, CoverPlan, CoverSolver, SolvedCoverOptions } from './types.ts';

/**
 * The fewest corner fences that serve all of these corners and, among plans of so many, the least total
 * adjustment. A fence serves a corner when its bottom and its side overhang both lie in the corner's intervals.
 * Covering rectangles with points is NP-hard, so what does not come apart by itself goes to the solver; it is
 * not called when every group of corners that overlap is served by one fence and no curve is asked for.
 */
export async function coverCorners(
  needs: readonly CornerNeed[],
  solver: CoverSolver,
  options: SolvedCoverOptions = {},
): Promise<CoverPlan> {
  const ranges = needs.map(({ id, weight, bottom, side }) => ({ id, weight, ranges: [bottom, side] }));
  const step = stepOf(options);
  const parts = [];
  for (const part of components(demandsOf(ranges))) parts.push(await fewestCover(part, solver, options));
  const fewest = parts.reduce((sum, { cover }) => sum + cover.jigs.length, 0);
  const most = options.curve === true ? Infinity : Math.max(fewest, options.spend ?? 0);
  const curves = [];
  for (const part of parts) {
    curves.push(await partCurve(part, part.cover.jigs.length + most - fewest, solver, options));
  }
  const covers = joinCurves(
    curves.map(({ covers }) => covers),
    most,
  );
  const bounds = curves.map((curve) => curve.bounds);
  const jigs = parts.reduce((sum, { bound }) => sum + bound, 0);
  // With fewer jigs than are known to do somewhere, others might be spent elsewhere: then nothing is known.
  const totalOf = (count: number): number =>
    jigs < fewest ? 0 : (joinBounds(bounds, count - fewest).at(-1) ?? 0);
  return planOf(ranges, covers, {
    spend: options.spend,
    round: (cover) => roundCover(cover, step),
    boundOf: (count) => ({ jigs, total: totalOf(count) }),
  });
}
