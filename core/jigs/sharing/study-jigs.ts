import type { CurvePoint } from '../cover/types.ts';
import { countJigs } from './count-jigs.ts';
import { lazySolver, type LoadSolver } from './lazy-solver.ts';
import { shareJigs, type ShareKept } from './share-jigs.ts';
import type { Sharing, SharingOf } from './types.ts';

/** What a shop can choose from: jigs against adjustment. */
export interface JigStudy {
  /** From the fewest jigs on, each with less adjustment than the one before. */
  readonly points: readonly CurvePoint[];
  /** The plan of the fewest jigs. */
  readonly fewest: Sharing;
  /** Jigs when each distinct overhang has its own. */
  readonly each: number;
}

/** The whole trade of an order, or why it could not be worked out. */
export type StudyOutcome =
  | { readonly study: JigStudy; readonly refusal: null }
  | { readonly study: null; readonly refusal: string };

/**
 * Works out jigs against adjustment for a whole order. A point that takes as many jigs as each distinct overhang's
 * own, or more, is left out: it offers nothing.
 */
export async function studyJigs(
  of: SharingOf,
  load: LoadSolver,
  kept: ShareKept = {},
): Promise<StudyOutcome> {
  const each = countJigs(of, kept.kinds);
  const solver = lazySolver(load);
  try {
    const fewest = await shareJigs(of, solver.solve, { curve: true }, kept);
    return { study: { points: fewest.curve.filter(({ jigs }) => jigs < each), fewest, each }, refusal: null };
  } catch (problem) {
    const why = solver.failure();
    if (why === null) throw problem;
    return { study: null, refusal: `The solver could not be loaded: ${why}` };
  }
}
