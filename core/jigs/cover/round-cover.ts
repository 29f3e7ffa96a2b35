import { SAME_OVERHANG } from '../../units/tolerances.ts';
import { coverOf, type Cover, type Group } from './cover.ts';
import { adjustmentAt, serves, type Site } from './demand.ts';
import { toMm, toNanometres } from './nanometres.ts';

/** mm, as a jig's settings are compared by the caller. */
export type AllowsTogether = (a: number, b: number) => boolean;

/**
 * The cover with overhangs at multiples of a step (nm) where drawers of different overhangs share one and all of
 * them allow it; of the two next to it the one that leaves less to adjust. What drawers of one overhang only use
 * stays as it is. The two settings of a jig are rounded only to a pair that is allowed, and none to where
 * another jig's is already.
 */
export function roundCover(cover: Cover, step: number, together: AllowsTogether = () => true): Cover {
  if (step === 0) return cover;
  const jigs: (readonly Group[])[] = [...cover.jigs];
  for (const [place, groups] of cover.jigs.entries()) {
    const isFree = (site: Site): boolean =>
      !jigs.some((others, index) => index !== place && others.some((other) => isSame(site, other.site)));
    jigs[place] = bestOf(groups, step, together, isFree);
  }
  return coverOf(jigs);
}

/** The settings of a jig, rounded as far as can be. */
function bestOf(
  groups: readonly Group[],
  step: number,
  together: AllowsTogether,
  isFree: (site: Site) => boolean,
): readonly Group[] {
  const [first, second] = groups.map((group) =>
    choices(group, step).filter(({ site }) => site === group.site || isFree(site)),
  );
  if (first === undefined) return groups;
  const pairs = first.flatMap((a) => (second === undefined ? [[a]] : second.map((b) => [a, b])));
  const isAllowed = ([a, b]: readonly Choice[]): boolean =>
    a === undefined ||
    b === undefined ||
    (!isSame(a.site, b.site) && together(toMm(a.site[0] ?? 0), toMm(b.site[0] ?? 0)));
  const [best] = pairs
    .filter(isAllowed)
    .toSorted(
      (a, b) =>
        sum(b, ({ round }) => round) - sum(a, ({ round }) => round) || sum(a, costOf) - sum(b, costOf),
    );
  return best?.map(({ site, group }) => ({ site, demands: group.demands })) ?? groups;
}

interface Choice {
  readonly group: Group;
  readonly site: Site;
  /** How many of its overhangs are multiples of the step. */
  readonly round: number;
}

/** The group's site with each overhang that is shared as it is or rounded down or up, as far as that serves it. */
function choices(group: Group, step: number): readonly Choice[] {
  let sites: readonly Site[] = [[]];
  for (const [axis, at] of group.site.entries()) {
    const ats = isShared(group, axis)
      ? new Set([at, Math.floor(at / step) * step, Math.ceil(at / step) * step])
      : [at];
    sites = sites.flatMap((site) => [...ats].map((choice) => [...site, choice]));
  }
  return sites
    .filter((site) => group.demands.every((demand) => serves(site, demand)))
    .map((site) => ({
      group,
      site: site.every((at, axis) => at === group.site[axis]) ? group.site : site,
      round: site.filter((at) => at % step === 0).length,
    }));
}

/** Whether drawers that want different overhangs use this one. */
function isShared({ demands }: Group, axis: number): boolean {
  const best = demands.flatMap(({ spans }) => spans[axis]?.best ?? []);
  return Math.max(...best) - Math.min(...best) > SAME;
}

/** nm. Overhangs that are nearer are made by one jig. */
const SAME = toNanometres(SAME_OVERHANG);

const isSame = (a: Site, b: Site): boolean =>
  a.every((at, axis) => Math.abs(at - (b[axis] ?? Infinity)) <= SAME);

const sum = (choices: readonly Choice[], of: (choice: Choice) => number): number =>
  choices.reduce((total, choice) => total + of(choice), 0);

const costOf = ({ site, group }: Choice): number =>
  group.demands.reduce((total, demand) => total + adjustmentAt(site, demand) * demand.weight, 0);
