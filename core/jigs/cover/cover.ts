import { adjustmentAt, serves, type Demand, type Site } from './demand.ts';

/** A setting of a jig and the demands that use it. */
export interface Group {
  readonly site: Site;
  readonly demands: readonly Demand[];
}

/** Jigs that serve some demands, each by its settings, and what they leave to adjust. */
export interface Cover {
  readonly jigs: readonly (readonly Group[])[];
  /** nm, over all drawers. */
  readonly total: number;
  /** nm, of one drawer. */
  readonly largest: number;
}

export const NOTHING: Cover = { jigs: [], total: 0, largest: 0 };

export function coverOf(jigs: Cover['jigs']): Cover {
  let total = 0;
  let largest = 0;
  for (const { site, demands } of jigs.flat()) {
    for (const demand of demands) {
      const adjustment = adjustmentAt(site, demand);
      total += adjustment * demand.weight;
      largest = Math.max(largest, adjustment);
    }
  }
  return { jigs, total, largest };
}

/**
 * Each demand goes to the setting that serves it with the least adjustment, the first of equals, and those to be
 * served alone to jigs of one setting only. Idle settings and jigs go.
 */
export function coverByJigs(jigs: readonly (readonly Site[])[], demands: readonly Demand[]): Cover {
  // A site of two jigs is two settings: told apart by identity.
  const own = jigs.map((sites) => sites.map((site): Site => [...site]));
  const used = new Map<Site, Demand[]>();
  for (const demand of demands) {
    const site = nearestOf(own, demand);
    const sharing = used.get(site);
    if (sharing === undefined) used.set(site, [demand]);
    else sharing.push(demand);
  }
  const groupsOf = (sites: readonly Site[]): readonly Group[] =>
    sites.flatMap((site) => {
      const demands = used.get(site);
      return demands === undefined ? [] : [{ site, demands }];
    });
  return coverOf(own.map(groupsOf).filter((groups) => groups.length > 0));
}

function nearestOf(jigs: readonly (readonly Site[])[], demand: Demand): Site {
  let nearest: Site | null = null;
  let least = Infinity;
  for (const sites of jigs) {
    if (!allowsJig(sites, demand)) continue;
    for (const site of sites) {
      if (!serves(site, demand)) continue;
      const adjustment = adjustmentAt(site, demand);
      if (adjustment >= least) continue;
      [nearest, least] = [site, adjustment];
    }
  }
  if (nearest === null) throw new Error('no jig serves a demand');
  return nearest;
}

/** Whether a jig of these settings may serve a demand at all. */
export const allowsJig = (settings: readonly unknown[], { alone }: Demand): boolean =>
  settings.length === 1 || !alone;

export const coverBySites = (sites: readonly Site[], demands: readonly Demand[]): Cover =>
  coverByJigs(
    sites.map((site) => [site]),
    demands,
  );

/** Fewer to adjust in all comes first, then the smaller largest. */
export const lessToAdjust = (
  a: Pick<Cover, 'total' | 'largest'>,
  b: Pick<Cover, 'total' | 'largest'>,
): boolean => a.total < b.total || (a.total === b.total && a.largest < b.largest);
