import type { Finding, Outcome } from '../../findings/finding.ts';
import { warning } from '../../findings/make.ts';
import { lazySolver, type LoadSolver } from './lazy-solver.ts';
import { shareJigs, type ShareKept } from './share-jigs.ts';
import type { JigSharing, Sharing, SharingOf } from './types.ts';

/** The sharing that was asked for, or null where each distinct overhang has its own jig. */
export type Shared = Outcome<Sharing | null>;

/**
 * Shares an order's jigs as the shop wishes. Where the solver is needed and cannot be loaded, each distinct
 * overhang keeps its own jig, with a warning; so there is a warning where fewer jigs were asked for than it takes.
 */
export async function shareOrder(
  of: SharingOf,
  wish: JigSharing,
  load: LoadSolver,
  kept: ShareKept = {},
): Promise<Shared> {
  if (wish === 'each' || of.fits.length === 0) return { value: null, findings: [] };
  const solver = lazySolver(load);
  try {
    const value = await shareJigs(of, solver.solve, wish === 'fewest' ? {} : { spend: wish }, kept);
    const isShort = typeof wish === 'number' && value.count > wish;
    return { value, findings: isShort ? [tooFew(wish, value.count)] : [] };
  } catch (problem) {
    const why = solver.failure();
    if (why === null) throw problem;
    return { value: null, findings: [noSolver(why)] };
  }
}

const tooFew = (wish: number, count: number): Finding =>
  warning(
    'jigs/too-few',
    `${wish === 1 ? '1 jig' : `${wish} jigs`} cannot set every drawer of this order: the adjusters need ${count}, which are made; ask for ${count} or more, or for the fewest.`,
    {},
    { asked: wish, count },
  );

const noSolver = (why: string): Finding =>
  warning(
    'jigs/no-solver',
    `Jigs are not shared, because the solver that finds the fewest could not be loaded (${why}): each distinct overhang has its own jig. Start the program anew, or ask for a jig for each.`,
  );
