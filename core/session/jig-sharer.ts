import type { DrawerFit } from '../fit/types.ts';
import { roomKey } from '../jigs/sharing/alike-rooms.ts';
import { jigRoom, type JigRoom } from '../jigs/sharing/jig-room.ts';
import type { LoadSolver } from '../jigs/sharing/lazy-solver.ts';
import { shareOrder, type Shared } from '../jigs/sharing/share-order.ts';
import { studyJigs, type StudyOutcome } from '../jigs/sharing/study-jigs.ts';
import type { JigSharing, SharingOf } from '../jigs/sharing/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { keyedMemo, sameItems } from './keyed-memo.ts';

/** Shares jigs, again and again: what has not changed is not worked out anew. */
export interface JigSharer {
  readonly share: (of: SharingOf, wish: JigSharing) => Promise<Shared>;
  /** The same for something that is only tried on: its answer is not kept. */
  readonly tryOn: (of: SharingOf, wish: JigSharing) => Promise<Shared>;
  readonly study: (of: SharingOf) => Promise<StudyOutcome>;
}

interface Kept<T> {
  readonly of: SharingOf;
  readonly wish: JigSharing | null;
  readonly answer: Promise<T>;
}

/** `load` is called once, and again if it fails; `workOut` gives the room of a drawer that is new or has changed. */
export function jigSharer(load: LoadSolver, workOut: typeof jigRoom = jigRoom): JigSharer {
  const rooms = keyedMemo<string, [DrawerFit, ShopStandard, 'left' | 'right'], JigRoom>(workOut, {
    // The key says the rest.
    same: ([, standard], [, now]) => standard === now,
  });
  let solver: ReturnType<LoadSolver> | null = null;
  const loadOnce: LoadSolver = async () => {
    solver ??= load();
    return solver.catch((problem: unknown) => {
      solver = null;
      throw problem;
    });
  };
  const keptFor = ({ standard }: SharingOf) => ({
    roomOf: (fit: DrawerFit, side: 'left' | 'right') =>
      rooms.get(`${side} ${roomKey(fit)}`, fit, standard, side),
  });
  let shared: Kept<Shared> | null = null;
  let studied: Kept<StudyOutcome> | null = null;
  return {
    share(of, wish) {
      if (shared === null || shared.wish !== wish || !sameNeeds(shared.of, of)) {
        shared = { of, wish, answer: shareOrder(of, wish, loadOnce, keptFor(of)) };
        rooms.endRound();
      }
      return shared.answer;
    },
    tryOn: (of, wish) => shareOrder(of, wish, loadOnce, keptFor(of)),
    study(of) {
      if (studied === null || !sameNeeds(studied.of, of)) {
        studied = { of, wish: null, answer: studyJigs(of, loadOnce, keptFor(of)) };
      }
      return studied.answer;
    },
  };
}

/** Whether sharing comes to the same. */
const sameNeeds = (a: SharingOf, b: SharingOf): boolean =>
  a.standard === b.standard &&
  a.registration === b.registration &&
  a.context === b.context &&
  sameItems(a.fits, b.fits);
