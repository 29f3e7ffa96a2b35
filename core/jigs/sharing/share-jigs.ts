import { coverBlocks } from '../cover/cover-blocks.ts';
import { coverCorners } from '../cover/cover-corners.ts';
import { stabIntervals } from '../cover/stab-intervals.ts';
import type { CoverPlan, CoverSolver, Proof, SolvedCoverOptions } from '../cover/types.ts';
import { CLEARLY_DIFFERENT } from '../kinds/side-spacer.ts';
import { refusedCorners } from '../plan-corner-jigs.ts';
import { PLAN_KINDS } from '../plan-kinds.ts';
import type { PlanKinds } from '../plan-types.ts';
import { alikeFits, chooseSides } from '../requirements.ts';
import { alikeRooms, type RoomOf } from './alike-rooms.ts';
import { cornerClasses, type CornerClass } from './corner-needs.ts';
import { edgeClasses, type EdgeClass } from './edge-needs.ts';
import { joinPoints, type JoinedPoint } from './join-points.ts';
import { SHOP_STEP } from './shop-step.ts';
import type { SharedJig, Sharing, SharingOf } from './types.ts';

export interface ShareOptions {
  /** Jigs that the shop is willing to make for less adjustment; the fewest if left out or if more are needed. */
  readonly spend?: number;
  /** Whether the whole curve is wanted, which takes more solving; with `spend` it always is. */
  readonly curve?: boolean;
  /** mm. What shared overhangs are rounded to where that costs no jig; the shop's fraction if left out, 0 for none. */
  readonly step?: number;
}

/** What a caller may keep for the next time. */
export interface ShareKept {
  readonly kinds?: PlanKinds;
  readonly roomOf?: RoomOf;
}

/**
 * Branches of one solve. Time would make the same order come out differently on another machine; so many take
 * seconds at most.
 */
const NODES = 2000;

/**
 * Which drawers share jigs: the fewest jigs that set all of them, or as many as the shop spends, with the least
 * adjustment in all. Bottoms, sides and the two hands of corner fences are covered apart, each exactly or with a
 * bound, and then weighed against one another.
 */
export async function shareJigs(
  of: SharingOf,
  solver: CoverSolver,
  options: ShareOptions = {},
  kept: ShareKept = {},
): Promise<Sharing> {
  const { spend, curve = spend !== undefined, step = SHOP_STEP[of.context.unit] } = options;
  const solve = remembered(solver);
  const classes = classesOf(of, kept);
  const limits: SolvedCoverOptions = { step, nodes: NODES, curve };
  const covered = [];
  for (const one of classes) covered.push(await cover(one, solve.solver, limits));

  const points = joinPoints(covered.map((plan) => plan.curve));
  const [fewest] = points;
  const chosen = points.findLast(({ jigs }) => jigs <= (spend ?? 0)) ?? fewest;
  const plans: CoverPlan[] = [];
  for (const [index, plan] of covered.entries()) {
    const one = classes[index];
    const jigs = chosen?.of[index] ?? plan.count;
    if (one === undefined) continue;
    plans.push(plan.count === jigs ? plan : await cover(one, solve.solver, { ...limits, spend: jigs }));
  }
  return {
    jigs: plans.flatMap((plan, index) => jigsOf(classes[index]?.place ?? 'bottom', plan)),
    count: chosen?.jigs ?? 0,
    totalAdjustment: plans.reduce((sum, { totalAdjustment }) => sum + totalAdjustment, 0),
    largestAdjustment: Math.max(0, ...plans.map(({ largestAdjustment }) => largestAdjustment)),
    step,
    roundingAdds: plans.reduce((sum, { roundingAdds }) => sum + roundingAdds, 0),
    proof: proofOf(plans, solve.wasCutShort() && chosen !== fewest),
    curve: points.map(({ jigs, total, largest }: JoinedPoint) => ({ jigs, total, largest })),
  };
}

function classesOf(
  { fits, standard, registration, context }: SharingOf,
  { kinds = PLAN_KINDS, roomOf = alikeRooms(standard) }: ShareKept,
): readonly (EdgeClass | CornerClass)[] {
  const refused = registration === 'corner' ? refusedCorners(fits, context, kinds) : new Set(fits);
  const lines = fits.map((fit, place) => ({ fit, place }));
  const edges = lines.filter(({ fit }) => refused.has(fit));
  const corners = lines.filter(({ fit }) => !refused.has(fit));
  const sides = chooseSides(alikeFits(edges.map(({ fit }) => fit)));
  return [
    ...cornerClasses(corners, roomOf, context, kinds),
    ...edgeClasses(edges, sides, roomOf, context, kinds),
  ];
}

function cover(
  one: EdgeClass | CornerClass,
  solver: CoverSolver,
  options: SolvedCoverOptions,
): CoverPlan | Promise<CoverPlan> {
  if (!('blocks' in one)) return coverCorners(one.needs, solver, options);
  if (!one.blocks) return stabIntervals(one.needs, options);
  const canPair = (a: number, b: number): boolean => Math.abs(a - b) >= CLEARLY_DIFFERENT;
  return coverBlocks(one.needs, { canPair, apart: CLEARLY_DIFFERENT }, solver, options);
}

const jigsOf = (place: SharedJig['place'], { jigs }: CoverPlan): readonly SharedJig[] =>
  jigs.map(({ settings }) => ({
    place,
    settings: settings.map(({ overhangs, serves }) => ({
      overhangs,
      lines: serves.map(({ id }) => Number(id)),
    })),
  }));

/** Of all plans together. With jigs to spend and a curve cut short, others might have been given where they save more. */
function proofOf(plans: readonly CoverPlan[], isOpen: boolean): Proof {
  if (!isOpen && plans.every(({ proof }) => proof === 'optimal')) return 'optimal';
  const bounds = plans.map(({ proof, count, totalAdjustment }) =>
    proof === 'optimal' ? { jigs: count, total: totalAdjustment } : proof.bound,
  );
  return {
    bound: {
      jigs: bounds.reduce((sum, { jigs }) => sum + jigs, 0),
      total: isOpen ? 0 : bounds.reduce((sum, { total }) => sum + total, 0),
    },
  };
}

/** A solver that solves nothing twice and knows whether it was ever cut short. */
function remembered(solver: CoverSolver): {
  readonly solver: CoverSolver;
  readonly wasCutShort: () => boolean;
} {
  const known = new Map<string, ReturnType<CoverSolver>>();
  let cutShort = false;
  return {
    async solver(lp, limits) {
      const key = `${JSON.stringify(limits)} ${lp}`;
      const solution = known.get(key) ?? solver(lp, limits);
      known.set(key, solution);
      const solved = await solution;
      if (solved.status === 'limit') cutShort = true;
      return solved;
    },
    wasCutShort: () => cutShort,
  };
}
