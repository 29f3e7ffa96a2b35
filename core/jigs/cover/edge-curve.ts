import { breakpoints, canBeBest } from './breakpoints.ts';
import { coverBySites, type Cover } from './cover.ts';
import type { Demand } from './demand.ts';
import { fewestPoints } from './fewest-points.ts';

interface Sum {
  readonly total: number;
  readonly largest: number;
}

const IMPOSSIBLE: Sum = { total: Infinity, largest: Infinity };

interface Step extends Sum {
  /** Place of the candidate before; -1 for none. */
  readonly from: number;
}

/**
 * For each number of jigs from the fewest on, the cover of these edges with the least adjustment; ends where
 * more jigs no longer help.
 *
 * Exact. A demand is best served by the nearest jig below or above its best overhang: any other that serves it
 * lies beyond one of these, which then serves too. So what a choice of jigs costs is a sum over neighbours, and
 * a shortest path over the sorted candidates finds the least, though groups of drawers may interleave.
 */
export function edgeCurve(demands: readonly Demand[]): readonly Cover[] {
  const edges = demands
    .flatMap(({ spans: [span], weight }) => (span === undefined ? [] : [{ ...span, weight }]))
    .toSorted((a, b) => a.best - b.best);
  const candidates = breakpoints(edges).filter((at) =>
    canBeBest(
      at,
      edges.filter(({ lo, hi }) => lo <= at && at <= hi),
    ),
  );
  /** Of the demands whose best overhang is above `below` and not above `above`, with no jig between. */
  const between = (below: number, above: number): Sum => {
    let total = 0;
    let largest = 0;
    for (const { lo, hi, best, weight } of edges) {
      if (best <= below) continue;
      if (best > above) break;
      const down = lo <= below ? best - below : Infinity;
      const up = above <= hi ? above - best : Infinity;
      const adjustment = Math.min(down, up);
      if (adjustment === Infinity) return IMPOSSIBLE;
      total += adjustment * weight;
      largest = Math.max(largest, adjustment);
    }
    return { total, largest };
  };
  const ends = candidates.map((at) => between(at, Infinity));
  const gaps = candidates.map((above, to) => {
    const possible: Sum[] = [];
    // From the nearest down: beyond a gap that leaves a demand unserved, so does every wider one.
    for (const below of candidates.slice(0, to).toReversed()) {
      const gap = between(below, above);
      if (gap.total === Infinity) break;
      possible.push(gap);
    }
    return possible;
  });
  const layers: (readonly Step[])[] = [candidates.map((at) => ({ ...between(-Infinity, at), from: -1 }))];
  const curve: Cover[] = [];
  const fewest = fewestPoints(edges).points.length;
  for (let jigs = 1; jigs <= candidates.length; jigs += 1) {
    const layer = layers.at(-1) ?? [];
    if (jigs >= fewest) {
      const end = bestOf(layer, ends, (place) => place);
      if (end.total < (curve.at(-1)?.total ?? Infinity)) {
        const sites = path(layers, end.from).map((place) => [candidates[place] ?? Number.NaN]);
        curve.push(coverBySites(sites, demands));
      }
      if (end.total === 0) break;
    }
    layers.push(gaps.map((possible, to) => bestOf(layer, possible, (back) => to - 1 - back)));
  }
  return curve;
}

/** The best way on from a layer by one of these gaps, the first of equals; `placeOf` a gap is where it starts. */
function bestOf(layer: readonly Step[], gaps: readonly Sum[], placeOf: (gap: number) => number): Step {
  let total = Infinity;
  let largest = Infinity;
  let from = -1;
  for (let index = 0; index < gaps.length; index += 1) {
    const place = placeOf(index);
    const before = layer[place];
    const gap = gaps[index];
    if (before === undefined || gap === undefined) continue;
    const sum = before.total + gap.total;
    if (sum > total || sum === Infinity) continue;
    const most = Math.max(before.largest, gap.largest);
    if (sum === total && most >= largest) continue;
    [total, largest, from] = [sum, most, place];
  }
  return { total, largest, from };
}

/** Places of the candidates chosen, ascending, that end with this one in the last layer. */
function path(layers: readonly (readonly Step[])[], end: number): readonly number[] {
  const places: number[] = [];
  let at = end;
  for (const layer of layers.toReversed()) {
    places.push(at);
    at = layer[at]?.from ?? -1;
  }
  return places.toReversed();
}
