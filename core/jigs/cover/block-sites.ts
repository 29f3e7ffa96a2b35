import { breakpoints } from './breakpoints.ts';
import { serves, type Demand, type Site } from './demand.ts';
import type { Makeable } from './least-adjustment.ts';
import { toMm, toNanometres } from './nanometres.ts';

/** Which overhangs one block can set by its two widths. */
export interface PairRule {
  /** mm, in either order. */
  readonly canPair: (a: number, b: number) => boolean;
  /**
   * mm. The least difference that the rule asks for, so that widths just so far apart are tried too: with a rule
   * that asks for nothing else, plans are exact. With other rules they are exact over the ends and wanted values.
   */
  readonly apart: number;
}

export interface Blocks {
  readonly sites: readonly Site[];
  readonly makeable: readonly Makeable[];
}

/**
 * The blocks worth making: of one width at an end or a best overhang, of two such, or of two just as far apart
 * as the rule asks, one of them such. For a block's two groups the adjustment is convex and piecewise linear,
 * so where the rule holds them apart one of the two is at a breakpoint of either.
 */
export function blockSites(demands: readonly Demand[], { canPair, apart }: PairRule): Blocks {
  const natural = breakpoints(demands.flatMap(({ spans }) => spans));
  // A nanometre more, lest the rule refuse for float noise.
  const gap = apart > 0 ? toNanometres(apart) + 1 : 0;
  const close = (gap === 0 ? [] : natural).flatMap((at): [number, number][] => [
    [at - gap, at],
    [at, at + gap],
  ]);
  const isUsed = (at: number): boolean => demands.some((demand) => serves([at], demand));
  const sites = [...new Set([...natural, ...close.flat()])].filter(isUsed).toSorted((a, b) => a - b);
  const place = new Map(sites.map((at, index) => [at, index]));
  const pairs = [
    ...natural.flatMap((a) => natural.filter((b) => a < b).map((b): [number, number] => [a, b])),
    ...close,
  ];
  const makeable = new Map<string, Makeable>();
  for (const at of natural) makeable.set(`${at}`, [place.get(at) ?? -1]);
  for (const [a, b] of pairs) {
    const first = place.get(a);
    const second = place.get(b);
    if (first === undefined || second === undefined || !canPair(toMm(a), toMm(b))) continue;
    makeable.set(`${a} ${b}`, [first, second]);
  }
  return { sites: sites.map((at) => [at]), makeable: [...makeable.values()] };
}
