import { breakpoints, canBeBest } from './breakpoints.ts';
import { adjustmentAt, serves, type Demand, type Site } from './demand.ts';
import { isWithin, rowsOf, type Rows } from './reduce-sets.ts';

/** A site, and which of the demands it serves. */
export interface SiteRows {
  readonly site: Site;
  readonly rows: Rows;
}

/**
 * Sites that suffice for the fewest jigs: whatever a jig serves, it still serves when it is moved up to the
 * nearest upper end along each axis.
 */
export function fewestSites(demands: readonly Demand[]): readonly SiteRows[] {
  const tops = axesOf(demands).map((spans) =>
    [...new Set(spans.map(({ hi }) => hi))].toSorted((a, b) => a - b),
  );
  return sitesAt(tops, demands);
}

/** Sites that suffice for the least adjustment, each group's being best along each axis; without useless ones. */
export function bestSites(demands: readonly Demand[]): readonly Site[] {
  const sites = sitesAt(axesOf(demands).map(breakpoints), demands).flatMap(({ site, rows }) => {
    const served = demands.filter((demand) => serves(site, demand));
    const spans = axesOf(served);
    return site.every((at, axis) => canBeBest(at, spans[axis] ?? [])) ? [{ site, rows, served }] : [];
  });
  // Useless: another serves the same, and more perhaps, none of it worse.
  return sites
    .filter(
      (one, index) =>
        !sites.some((other, place) => {
          if (place === index || !isWithin(one.rows, other.rows)) return false;
          const gains = one.served.map(
            (demand) => adjustmentAt(one.site, demand) - adjustmentAt(other.site, demand),
          );
          const isSame = one.rows === other.rows && gains.every((gain) => gain === 0);
          return gains.every((gain) => gain >= 0) && (!isSame || place < index);
        }),
    )
    .map(({ site }) => site);
}

const axesOf = (demands: readonly Demand[]) =>
  (demands[0]?.spans ?? []).map((_, axis) =>
    demands.flatMap(({ spans }) => {
      const span = spans[axis];
      return span === undefined ? [] : [span];
    }),
  );

/** The sites of a grid that serve any of the demands. */
function sitesAt(axes: readonly (readonly number[])[], demands: readonly Demand[]): readonly SiteRows[] {
  const grid = axes.reduce<readonly Site[]>(
    (sites, ats) => sites.flatMap((site) => ats.map((at) => [...site, at])),
    [[]],
  );
  return grid.flatMap((site) => {
    const rows = rowsOf([...demands.keys()].filter((place) => servesAt(site, demands[place])));
    return rows === 0n ? [] : [{ site, rows }];
  });
}

const servesAt = (site: Site, demand: Demand | undefined): boolean =>
  demand !== undefined && serves(site, demand);
