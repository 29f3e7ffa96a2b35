import { blockSites, type PairRule } from './block-sites.ts';
import { components } from './components.ts';
import { coverByJigs, coverOf, type Cover } from './cover.ts';
import { planOf } from './cover-plan.ts';
import { demandsOf, type Demand } from './demand.ts';
import { edgeCurve } from './edge-curve.ts';
import { blocksNeeded, fewestBlocks } from './fewest-blocks.ts';
import { ever, joinCurves } from './join-curves.ts';
import { leastAdjustment } from './least-adjustment.ts';
import { mostPairs } from './most-pairs.ts';
import { toMm } from './nanometres.ts';
import { roundCover } from './round-cover.ts';
import { stepOf } from './stab-intervals.ts';
import type { CoverPlan, CoverSolver, SideNeed, SolvedCoverOptions } from './types.ts';

/**
 * The fewest blocks of one or two widths that serve all of these sides and, among plans of so many, the least
 * total adjustment. Widths and pairs are chosen together. Without the solver where the covers of single widths,
 * which no block plan can beat, pair up well; else by the solver.
 */
export async function coverBlocks(
  needs: readonly SideNeed[],
  rule: PairRule,
  solver: CoverSolver,
  options: SolvedCoverOptions = {},
): Promise<CoverPlan> {
  const ranges = needs.map(({ interval, wanted, ...need }) => ({ ...need, ranges: [{ interval, wanted }] }));
  const demands = demandsOf(ranges);
  const step = stepOf(options);
  const widths = joinCurves(components(demands).map(edgeCurve));
  const paired: Cover[] = [];
  for (const cover of widths) paired.push(await pairUp(cover, rule, solver, options));

  let first = paired.reduce((best, next) => (next.jigs.length < best.jigs.length ? next : best));
  let fewest = blocksNeeded(demands);
  if (first.jigs.length > fewest) {
    const { cover, bound } = await fewestBlocks(demands, rule, solver, options);
    if (cover.jigs.length < first.jigs.length) first = cover;
    fewest = Math.max(fewest, bound);
  }
  const start = first.jigs.length;
  const end = options.curve === true ? demands.length : Math.max(start, options.spend ?? 0);
  const covers: Cover[] = [];
  const bounds = new Map<number, number>();
  const least = widths.at(-1)?.total ?? 0;
  for (let blocks = start; blocks <= end; blocks += 1) {
    const before: Cover = covers.at(-1) ?? first;
    // What so many blocks adjust at least: twice as many widths, paired or not.
    const floor = widths.findLast(({ jigs }) => jigs.length <= 2 * blocks)?.total ?? 0;
    const easy = paired.find(({ jigs, total }) => jigs.length <= blocks && total === floor);
    const solved: Solved =
      easy === undefined
        ? await solve(demands, rule, blocks, solver, options)
        : { cover: easy, bound: floor };
    const known = [before, ...paired.filter(({ jigs }) => jigs.length <= blocks), solved.cover ?? before];
    const cover = known.reduce((best, next) => (next.total < best.total ? next : best));
    covers.push(cover);
    bounds.set(blocks, Math.max(floor, solved.bound));
    if (cover.total === least) break;
  }
  return planOf(ranges, ever(covers), {
    spend: options.spend,
    round: (cover) => roundCover(cover, step, rule.canPair),
    boundOf: (count) => ({ jigs: fewest, total: bounds.get(Math.max(count, start)) ?? 0 }),
  });
}

interface Solved {
  readonly cover: Cover | null;
  readonly bound: number;
}

/** The least adjustment with so many blocks, by the solver. */
async function solve(
  demands: readonly Demand[],
  rule: PairRule,
  blocks: number,
  solver: CoverSolver,
  options: SolvedCoverOptions,
): Promise<Solved> {
  const { sites, makeable } = blockSites(demands, rule);
  const placed = await leastAdjustment({ sites, makeable, demands }, blocks, solver, options);
  if (placed === null) return { cover: null, bound: 0 };
  const made = placed.made.map((jig) =>
    (makeable[jig] ?? []).flatMap((place) => sites.slice(place, place + 1)),
  );
  const cover = coverByJigs(made, demands);
  return { cover, bound: placed.isOptimal ? cover.total : placed.bound };
}

/** Single widths put together in as many pairs as the rule allows. */
async function pairUp(
  { jigs }: Cover,
  { canPair }: PairRule,
  solver: CoverSolver,
  options: SolvedCoverOptions,
): Promise<Cover> {
  const groups = jigs.flat().toSorted((a, b) => (a.site[0] ?? 0) - (b.site[0] ?? 0));
  const pairs = await mostPairs(
    groups.length,
    (a, b) => {
      const pair = [groups[a], groups[b]].flatMap((group) => (group === undefined ? [] : [group]));
      const [one, two] = pair.map(({ site }) => toMm(site[0] ?? 0));
      if (one === undefined || two === undefined) return false;
      return !pair.some(({ demands }) => demands.some(({ alone }) => alone)) && canPair(one, two);
    },
    solver,
    options,
  );
  const paired = new Set(pairs.flat());
  return coverOf([
    ...pairs.map((pair) => pair.flatMap((item) => groups.slice(item, item + 1))),
    ...groups.filter((_, item) => !paired.has(item)).map((group) => [group]),
  ]);
}
