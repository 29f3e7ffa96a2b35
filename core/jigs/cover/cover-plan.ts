import { NOTHING, type Cover } from './cover.ts';
import { roundTo, SAME_LENGTH } from '../../units/tolerances.ts';
import type { Ranges } from './demand.ts';
import { toMm } from './nanometres.ts';
import type { CoverJig, CoverPlan, Served } from './types.ts';

/** What is known of any plan: the fewest jigs, and with so many the least total (nm). */
export interface Bound {
  readonly jigs: number;
  readonly total: number;
}

interface Finish {
  readonly spend: number | undefined;
  /** To the shop's step. */
  readonly round: (cover: Cover) => Cover;
  /** For this number of jigs; null when the covers are exact by themselves. */
  readonly boundOf: ((jigs: number) => Bound) | null;
}

/**
 * The plan of the covers of an order, from the fewest jigs on: the first, or the last that the shop is willing to
 * spend jigs on. Jigs are sorted by overhang, drawers in the order in which they came.
 */
export function planOf(
  needs: readonly Ranges[],
  covers: readonly Cover[],
  { spend = 0, round, boundOf }: Finish,
): CoverPlan {
  const [fewest = NOTHING] = covers;
  const chosen = covers.findLast(({ jigs }) => jigs.length <= spend) ?? fewest;
  const bound = boundOf?.(chosen.jigs.length);
  const isOptimal = bound === undefined || (bound.jigs >= fewest.jigs.length && bound.total >= chosen.total);
  const rounded = round(chosen);
  const jigs = jigsOf(needs, rounded);
  const { total, largest } = measure(needs, jigs);
  return {
    jigs,
    count: jigs.length,
    totalAdjustment: total,
    largestAdjustment: largest,
    roundingAdds: toMm(rounded.total - chosen.total),
    proof: isOptimal ? 'optimal' : { bound: { jigs: bound.jigs, total: toMm(bound.total) } },
    curve: covers.map((cover) => {
      const jigs = jigsOf(needs, round(cover));
      return { jigs: jigs.length, ...measure(needs, jigs) };
    }),
  };
}

function jigsOf(needs: readonly Ranges[], { jigs }: Cover): readonly CoverJig[] {
  return jigs
    .map((groups) => ({
      settings: groups
        .map(({ site, demands }) => {
          const overhangs = site.map(toMm);
          const members = demands.flatMap((demand) => demand.needs).toSorted((a, b) => a - b);
          return {
            overhangs,
            serves: members.flatMap((index): readonly Served[] => {
              const need = needs[index];
              return need === undefined ? [] : [servedBy(overhangs, need)];
            }),
          };
        })
        .toSorted((a, b) => compare(b.overhangs, a.overhangs)),
    }))
    .toSorted((a, b) => compare(a.settings[0]?.overhangs ?? [], b.settings[0]?.overhangs ?? []));
}

const servedBy = (overhangs: readonly number[], { id, ranges }: Ranges): Served => ({
  id,
  adjustment: ranges.map(({ wanted }, axis) => roundTo(wanted - (overhangs[axis] ?? Number.NaN), DECIMALS)),
});

/** Of nanometres: what is less is float noise. */
const DECIMALS = Math.round(-Math.log10(SAME_LENGTH));

const compare = (a: readonly number[], b: readonly number[]): number =>
  a.map((at, axis) => at - (b[axis] ?? 0)).find((difference) => difference !== 0) ?? 0;

function measure(needs: readonly Ranges[], jigs: readonly CoverJig[]): { total: number; largest: number } {
  const weights = new Map(needs.map(({ id, weight }) => [id, weight]));
  let total = 0;
  let largest = 0;
  for (const { id, adjustment } of jigs.flatMap(({ settings }) => settings.flatMap(({ serves }) => serves))) {
    for (const length of adjustment.map(Math.abs)) {
      total += length * (weights.get(id) ?? 0);
      largest = Math.max(largest, length);
    }
  }
  return { total: roundTo(total, DECIMALS), largest };
}
