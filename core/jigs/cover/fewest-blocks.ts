import { blockSites, type PairRule } from './block-sites.ts';
import { allowsJig, coverByJigs, type Cover } from './cover.ts';
import { serves, type Demand, type Site } from './demand.ts';
import { fewestPoints } from './fewest-points.ts';
import { fewestSets } from './fewest-sets.ts';
import { rowsOf } from './reduce-sets.ts';
import type { CoverSolver, SolverLimits } from './types.ts';

/**
 * No plan has fewer blocks: a block sets two widths at most, one where a drawer is served alone, and the fewest
 * widths are known.
 */
export function blocksNeeded(demands: readonly Demand[]): number {
  const widths = (some: readonly Demand[]): number =>
    fewestPoints(some.flatMap(({ spans }) => spans)).points.length;
  const alone = widths(demands.filter((demand) => demand.alone));
  return Math.ceil((widths(demands) + alone) / 2);
}

/**
 * The fewest blocks, widths and pairs chosen together. Choosing the fewest widths first and then pairing them can
 * give more blocks: just where they were put they may lie too near each other, where others would pair.
 */
export async function fewestBlocks(
  demands: readonly Demand[],
  rule: PairRule,
  solver: CoverSolver,
  limits: SolverLimits,
): Promise<{ readonly cover: Cover; readonly bound: number }> {
  const { sites, makeable } = blockSites(demands, rule);
  const blocks = makeable.map((places) => places.flatMap((place) => sites.slice(place, place + 1)));
  const rows = (block: readonly Site[]) =>
    rowsOf(
      [...demands.entries()]
        .filter(([, demand]) => allowsJig(block, demand) && block.some((site) => serves(site, demand)))
        .map(([row]) => row),
    );
  const byRows = new Map(blocks.toReversed().map((block) => [rows(block), block]));
  const masks = [...byRows.keys()].toReversed();
  const { chosen, bound } = await fewestSets(masks, demands.length, solver, limits);
  const made = chosen.map((set) => byRows.get(masks[set] ?? 0n) ?? []);
  return { cover: coverByJigs(made, demands), bound };
}
