import { groupBy } from '../collections/group-by.ts';
import type { StockScrew } from '../rules/fastening-types.ts';
import { curesFor } from './cures.ts';
import type { DrawerContext } from './drawer-context.ts';
import { isPossible } from './is-possible.ts';
import { isLength, marginsAt } from './margins.ts';
import { nearestMiss } from './nearest-miss.ts';
import { placeKey } from './place-key.ts';
import { placeProblem, waysOf } from './place-problem.ts';
import type { PlaceSpec } from './place-spec.ts';
import { cornerSpecs } from './places.ts';
import { screwPlace } from './screw-place.ts';
import type { PlaceProblem, SolvedPlace } from './solve-place.ts';
import type { Impossible } from './types.ts';

/** Of screws none of which fits a drawer's corners, the one whose worst corner is missed by least: why it fails. */
export function nearestScrew(context: DrawerContext): readonly Impossible[] {
  let nearest: { readonly screw: StockScrew; readonly failed: readonly PlaceSpec[] } | null = null;
  let level = -Infinity;
  for (const screw of context.standard.fastening.stock) {
    const miss = worstMiss(context, screw, level);
    if (miss !== null) [nearest, level] = [{ screw, failed: miss.failed }, miss.level];
  }
  return nearest === null ? [] : explainAll(context, nearest.screw, nearest.failed, 0);
}

/**
 * The corners where a screw fails, and the level in mm of the one that it misses by most; null where that is below
 * `floor`. Corners that are alike are solved once.
 */
function worstMiss(
  context: DrawerContext,
  screw: StockScrew,
  floor: number,
): { readonly failed: readonly PlaceSpec[]; readonly level: number } | null {
  const alike = groupBy(cornerSpecs(context, screw), (spec) => placeKey(context, screw, spec, waysOf(spec)));
  const failed: PlaceSpec[] = [];
  let level = Infinity;
  for (const specs of alike.values()) {
    const [first] = specs;
    if (first === undefined) continue;
    const problem = placeProblem(context, screw, first);
    if (isPossible(problem)) continue;
    const miss = missOf(problem, floor);
    if (miss === null) return null;
    failed.push(...specs);
    level = Math.min(level, miss.level);
  }
  return { failed, level };
}

/**
 * The nearest miss of each place where a screw fails, and what would cure it. `placed` is how many places the
 * screw has besides.
 */
export function explainAll(
  context: DrawerContext,
  screw: StockScrew,
  failed: readonly PlaceSpec[],
  placed: number,
): readonly Impossible[] {
  const known = new Map<string, Explained>();
  const share = context.standard.fastening.pull.value / (placed + failed.length);
  return failed.flatMap((spec): readonly Impossible[] => {
    const key = placeKey(context, screw, spec, waysOf(spec));
    const { miss, cures } = known.get(key) ?? explain(context, screw, spec);
    known.set(key, { miss, cures });
    if (miss === null) return [];
    const nearest = screwPlace(context, screw, spec, miss, share).place;
    const { corner, index, along } = spec;
    const lengths = nearest.margins.filter(isLength).toSorted((a, b) => a.over - b.over);
    const others = nearest.margins.filter((margin) => !isLength(margin));
    return [{ corner, index, along, nearest, screw, margins: [...lengths, ...others], cures }];
  });
}

interface Explained {
  readonly miss: SolvedPlace | null;
  readonly cures: readonly string[];
}

const explain = (context: DrawerContext, screw: StockScrew, spec: PlaceSpec): Explained => ({
  miss: missOf(placeProblem(context, screw, spec)),
  cures: curesFor(context, screw, spec),
});

/** The nearest miss in any wood, above `floor`; its active limits are those that fail. */
function missOf(
  { woods, prefer }: PlaceProblem,
  floor = -Infinity,
): (SolvedPlace & { readonly level: number }) | null {
  let best: (SolvedPlace & { readonly level: number }) | null = null;
  for (const { member, limits } of woods) {
    const miss = nearestMiss(limits, prefer, best?.level ?? floor);
    if (miss === null) continue;
    const { slope, entry, level } = miss;
    const margins = marginsAt(limits, slope, entry);
    const active = margins.filter((margin) => isLength(margin) && margin.over < 0).map(({ limit }) => limit);
    best = { member, slope, smallest: slope, entry, level, margins, active };
  }
  return best;
}
