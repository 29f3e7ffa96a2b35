import type { Point } from '../geometry/types.ts';
import { activeLimits } from './active-limits.ts';
import { chooseEntry } from './choose-entry.ts';
import type { PlaceLimits } from './limits/types.ts';
import { marginsAt, tightestMargin } from './margins.ts';
import { roundLean } from './round-lean.ts';
import { smallestLeans } from './smallest-angle.ts';
import type { Ways } from './smallest-angle.ts';
import { tangentOf } from './slope.ts';
import type { Slope } from './slope.ts';
import type { LimitName, Margin } from './types.ts';
import type { Member } from './woods.ts';

/** One place to solve: its limits in each wood that it may be in, in the frame of its corner. Plain data. */
export interface PlaceProblem {
  readonly woods: readonly { readonly member: Member; readonly limits: PlaceLimits }[];
  readonly prefer: Point;
  readonly aim: 'margin' | 'row';
  readonly ways: Ways;
  /** Degrees. */
  readonly angleStep: number;
}

/** A place in the frame of its corner. */
export interface SolvedPlace {
  readonly member: Member;
  readonly slope: Slope;
  /** Of the smallest angle. */
  readonly smallest: Slope;
  readonly entry: Point;
  readonly margins: readonly Margin[];
  readonly active: readonly LimitName[];
}

/**
 * The place of one screw: in the wood where it leans least, straight if that can be; null when no limit gives.
 * Of woods that allow the same angle, the one with the largest least margin.
 */
export function solvePlace(problem: PlaceProblem): SolvedPlace | null {
  const { prefer, aim, ways, angleStep } = problem;
  const smallests = smallestLeans(
    problem.woods.map(({ limits }) => limits),
    ways,
  );
  const solved = problem.woods.flatMap(({ member, limits }, index): readonly SolvedPlace[] => {
    const smallest = smallests[index] ?? null;
    if (smallest === null) return [];
    const slope = tangentOf(smallest) === 0 ? smallest : roundLean(limits, smallest, angleStep);
    const entry = chooseEntry(limits, slope, prefer, aim);
    if (entry === null) return [];
    const margins = marginsAt(limits, slope, entry);
    return [{ member, slope, smallest, entry, margins, active: activeLimits(limits, smallest) }];
  });
  return solved.reduce<SolvedPlace | null>((a, b) => (a === null || isBetter(b, a) ? b : a), null);
}

function isBetter(a: SolvedPlace, b: SolvedPlace): boolean {
  const [one, other] = [tangentOf(a.smallest), tangentOf(b.smallest)];
  if (Math.abs(one - other) > 1e-9) return one < other;
  return (tightestMargin(a.margins)?.over ?? 0) > (tightestMargin(b.margins)?.over ?? 0) + 1e-9;
}
