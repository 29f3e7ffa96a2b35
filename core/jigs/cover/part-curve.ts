import { commonSite } from './common-site.ts';
import { bestSites, fewestSites } from './corner-sites.ts';
import { coverBySites, coverOf, type Cover } from './cover.ts';
import type { Demand, Site } from './demand.ts';
import { fewestSets } from './fewest-sets.ts';
import { leastAdjustment, type MedianProblem } from './least-adjustment.ts';
import { ever } from './join-curves.ts';
import type { CoverSolver, SolverLimits } from './types.ts';

/** The fewest jigs of one part of an order, and how sure that is. */
export interface FewestCover {
  readonly demands: readonly Demand[];
  readonly cover: Cover;
  readonly bound: number;
}

/** A single jig where one serves all, else the solver's answer, each jig at the best place for its drawers. */
export async function fewestCover(
  demands: readonly Demand[],
  solver: CoverSolver,
  limits: SolverLimits,
): Promise<FewestCover> {
  const common = commonSite(demands);
  if (common !== null) return { demands, cover: coverBySites([common], demands), bound: 1 };
  const sites = fewestSites(demands);
  const { chosen, bound } = await fewestSets(
    sites.map(({ rows }) => rows),
    demands.length,
    solver,
    limits,
  );
  const places = chosen.flatMap((set) => {
    const found = sites[set];
    return found === undefined ? [] : [found.site];
  });
  return { demands, cover: centred(coverBySites(places, demands)), bound };
}

/** Covers of ever more jigs and ever less adjustment. */
export interface PartCurve {
  readonly covers: readonly Cover[];
  /** nm. No cover of the fewest jigs adjusts less; then of one jig more, and so on. Less than nothing is never. */
  readonly bounds: readonly number[];
}

/** From the fewest jigs of a part to `most` of them, each with the least adjustment. */
export async function partCurve(
  { demands, cover: fewest }: FewestCover,
  most: number,
  solver: CoverSolver,
  limits: SolverLimits,
): Promise<PartCurve> {
  const covers: Cover[] = [];
  const bounds: number[] = [];
  let problem: MedianProblem | null = null;
  for (let jigs = fewest.jigs.length; jigs <= Math.min(most, demands.length); jigs += 1) {
    const before = covers.at(-1) ?? fewest;
    let cover: Cover;
    let bound = 0;
    if (jigs === demands.length) {
      cover = coverBySites(demands.map(bestSite), demands);
    } else if (jigs === 1) {
      // One jig for all is already at its best place.
      cover = fewest;
      bound = fewest.total;
    } else {
      problem ??= problemOf(demands);
      const { sites } = problem;
      const placed = await leastAdjustment(problem, jigs, solver, limits);
      const made = (placed?.made ?? []).flatMap((site) => sites.slice(site, site + 1));
      const found = placed === null ? before : centred(coverBySites(made, demands));
      // A search that was cut short may have found less than is known already.
      cover = found.total <= before.total ? found : before;
      bound = placed?.isOptimal === true ? cover.total : (placed?.bound ?? 0);
    }
    covers.push(cover);
    bounds.push(bound);
    if (cover.total === 0) break;
  }
  return { covers: ever(covers), bounds };
}

const bestSite = ({ spans }: Demand): Site => spans.map(({ best }) => best);

function problemOf(demands: readonly Demand[]): MedianProblem {
  const sites = bestSites(demands);
  return { sites, makeable: sites.map((_, site) => [site]), demands };
}

/** Each jig moved to the best place for what it serves. */
const centred = (cover: Cover): Cover =>
  coverOf(
    cover.jigs.map((groups) =>
      groups.map(({ site, demands }) => ({ site: commonSite(demands) ?? site, demands })),
    ),
  );
