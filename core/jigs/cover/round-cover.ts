import { adjustmentAt, serves, type Site } from './demand.ts';
import { coverOf, type Cover, type Group } from './cover.ts';
import { toMm } from './nanometres.ts';

/** mm, as a jig's settings are compared by the caller. */
export type AllowsTogether = (a: number, b: number) => boolean;

/**
 * The cover with overhangs at multiples of a step (nm) where all drawers of the setting allow one; the nearer
 * in adjustment of the two next to each. The two settings of a jig are rounded only to a pair that is allowed.
 */
export function roundCover(cover: Cover, step: number, together: AllowsTogether = () => true): Cover {
  if (step === 0) return cover;
  const jigs = cover.jigs.map((groups) => {
    const [first, second] = groups.map((group) => choices(group, step));
    if (first === undefined) return groups;
    const pairs = first.flatMap((a) => (second === undefined ? [[a]] : second.map((b) => [a, b])));
    const isAllowed = ([a, b]: readonly Choice[]): boolean =>
      a === undefined || b === undefined || together(toMm(a.site[0] ?? 0), toMm(b.site[0] ?? 0));
    const [best] = pairs
      .filter(isAllowed)
      .toSorted(
        (a, b) =>
          sum(b, ({ round }) => round) - sum(a, ({ round }) => round) || sum(a, costOf) - sum(b, costOf),
      );
    return best?.map(({ site, group }) => ({ site, demands: group.demands })) ?? groups;
  });
  return coverOf(jigs);
}

interface Choice {
  readonly group: Group;
  readonly site: Site;
  /** How many of its overhangs are multiples of the step. */
  readonly round: number;
}

/** The group's site with each overhang as it is or rounded down or up, as far as that serves it. */
function choices(group: Group, step: number): readonly Choice[] {
  let sites: readonly Site[] = [[]];
  for (const at of group.site) {
    const ats = new Set([at, Math.floor(at / step) * step, Math.ceil(at / step) * step]);
    sites = sites.flatMap((site) => [...ats].map((choice) => [...site, choice]));
  }
  return sites
    .filter((site) => group.demands.every((demand) => serves(site, demand)))
    .map((site) => ({ group, site, round: site.filter((at) => at % step === 0).length }));
}

const sum = (choices: readonly Choice[], of: (choice: Choice) => number): number =>
  choices.reduce((total, choice) => total + of(choice), 0);

const costOf = ({ site, group }: Choice): number =>
  group.demands.reduce((total, demand) => total + adjustmentAt(site, demand) * demand.weight, 0);
