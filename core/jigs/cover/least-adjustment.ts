import { allowsJig } from './cover.ts';
import { adjustmentAt, serves, type Demand, type Site } from './demand.ts';
import { lpText, type Row, type Term } from './lp-text.ts';
import { toMm, toNanometres } from './nanometres.ts';
import type { CoverSolver, SolverLimits } from './types.ts';

/** A jig that could be made: the places of its settings among the sites. */
export type Makeable = readonly number[];

export interface Placed {
  /** Indexes of the jigs to make. */
  readonly made: readonly number[];
  /** nm. No choice adjusts less in all. */
  readonly bound: number;
  readonly isOptimal: boolean;
}

/**
 * Which jigs to make, `most` of them, so that the least is left to adjust in all: a weighted median problem.
 * Each demand is served by one setting of a made jig. Null when the solver was cut short before it found any.
 */
export async function leastAdjustment(
  { sites, makeable, demands }: MedianProblem,
  most: number,
  solver: CoverSolver,
  limits: SolverLimits,
): Promise<Placed | null> {
  const made = (jig: number): string => `y${jig}`;
  const served = (demand: number, site: number): string => `x${demand}_${site}`;
  const objective: Term[] = [];
  const rows: Row[] = [];
  const jigsAt = sites.map((_, site) => [...makeable.keys()].filter((jig) => makeable[jig]?.includes(site)));
  for (const [place, demand] of demands.entries()) {
    const by: Term[] = [];
    for (const [at, site] of sites.entries()) {
      if (!serves(site, demand)) continue;
      const jigs = (jigsAt[at] ?? []).filter((jig) => allowsJig(makeable[jig] ?? [], demand));
      if (jigs.length === 0) continue;
      const name = served(place, at);
      by.push({ times: 1, name });
      objective.push({ times: toMm(adjustmentAt(site, demand) * demand.weight), name });
      rows.push({
        terms: [{ times: 1, name }, ...jigs.map((jig) => ({ times: -1, name: made(jig) }))],
        sense: '<=',
        than: 0,
      });
    }
    rows.push({ terms: by, sense: '=', than: 1 });
  }
  const names = [...makeable.keys()].map(made);
  rows.push({ terms: names.map((name) => ({ times: 1, name })), sense: '<=', than: most });
  const { status, bound, valueOf } = await solver(lpText(objective, rows, names), limits);
  if (valueOf === null) return null;
  return {
    made: [...makeable.keys()].filter((jig) => valueOf(made(jig)) > 0.5),
    bound: Math.max(0, toNanometres(bound)),
    isOptimal: status === 'optimal',
  };
}

export interface MedianProblem {
  readonly sites: readonly Site[];
  readonly makeable: readonly Makeable[];
  readonly demands: readonly Demand[];
}
