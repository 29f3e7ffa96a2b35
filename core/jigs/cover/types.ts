/** What one adjuster leaves open: the overhang wanted, and those it can still put right (mm, both ends count). */
export interface Range {
  /** Least and largest overhang of a jig that serves. */
  readonly interval: readonly [lo: number, hi: number];
  /** At which nothing need be adjusted; may lie outside where an adjuster works one way only. */
  readonly wanted: number;
}

/** One edge of a line of the order. */
export interface Need extends Range {
  readonly id: string;
  /** How many drawers; each counts in the total adjustment. */
  readonly weight: number;
}

/** A side that a side spacer sets. */
export interface SideNeed extends Need {
  /** Whether a block of two widths cannot serve it, its edge being too short for the two labels say. */
  readonly alone?: boolean;
}

/** One lower corner of a line of the order: a corner fence serves it if both of its overhangs do. */
export interface CornerNeed {
  readonly id: string;
  readonly weight: number;
  readonly bottom: Range;
  readonly side: Range;
}

/** A drawer served, and what its adjusters then have to do: wanted less got, mm, one number for each overhang. */
export interface Served {
  readonly id: string;
  readonly adjustment: readonly number[];
}

/** What a jig sets: one overhang, or bottom and side (mm), and for whom. */
export interface Setting {
  readonly overhangs: readonly number[];
  readonly serves: readonly Served[];
}

/** A jig sets one thing; a block of two widths, the wide one first, sets two. */
export interface CoverJig {
  readonly settings: readonly Setting[];
}

/** How far a plan is from the best there can be. */
export type Proof =
  | 'optimal'
  /** The search was cut short: no plan has fewer jigs, nor, with so many, a smaller total (mm). */
  | { readonly bound: { readonly jigs: number; readonly total: number } };

/** A bargain: so many jigs, so much adjusting. */
export interface CurvePoint {
  readonly jigs: number;
  /** mm. Sum over all drawers and overhangs. */
  readonly total: number;
  /** mm. Of any one adjuster, in the plan of this point. */
  readonly largest: number;
}

/** The jigs that serve an order: the fewest, and among those the least total adjustment. */
export interface CoverPlan {
  readonly jigs: readonly CoverJig[];
  readonly count: number;
  readonly totalAdjustment: number;
  readonly largestAdjustment: number;
  /** mm. How much of the total comes of rounding to the shop's step. */
  readonly roundingAdds: number;
  /** Of count and total before overhangs were rounded to the shop's step. */
  readonly proof: Proof;
  /** From the fewest jigs on, each point with less adjustment than the one before; ends with this plan or later. */
  readonly curve: readonly CurvePoint[];
}

export interface CoverOptions {
  /**
   * mm. Overhangs that drawers of different ones share are rounded to multiples of it where every drawer served
   * allows; 0 for none.
   */
  readonly step?: number;
  /** Jigs that the shop is willing to make for less adjustment. The fewest are made if left out or if more are needed. */
  readonly spend?: number;
}

/** For covers that may need the solver. */
export interface SolvedCoverOptions extends CoverOptions, SolverLimits {
  /** The whole trade of jigs against adjustment, which takes a solve for each number of jigs; otherwise up to the plan. */
  readonly curve?: boolean;
}

/** Of one solve; none if left out. */
export interface SolverLimits {
  readonly seconds?: number;
  readonly nodes?: number;
}

/** Solves an integer program in LP format to the end, with no gap, or says how far it came. */
export type CoverSolver = (lp: string, limits: SolverLimits) => Promise<CoverSolution> | CoverSolution;

export interface CoverSolution {
  /** `limit`: cut short, with the best solution so far if there is one. */
  readonly status: 'optimal' | 'limit';
  /** No solution has a smaller objective. */
  readonly bound: number;
  /** The value of a variable by name; null when there is no solution yet. */
  readonly valueOf: ((name: string) => number) | null;
}
