import type { Fastening } from '../fastening/types.ts';
import { fastenDrawer } from '../fastening/fasten-drawer.ts';
import { fastenedAs, fastenOrder } from '../fastening/fasten-order.ts';
import { fasteningKey } from '../fastening/fastening-key.ts';
import { memoSolver, type Solver } from '../fastening/solver.ts';
import type { Outcome } from '../findings/finding.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { keyedMemo } from './keyed-memo.ts';

/** Fastens fronts, again and again: drawers that are alike, or still the same, are not solved anew. */
export interface Fastener {
  readonly fasten: (fits: readonly DrawerFit[], standard: ShopStandard) => Outcome<readonly Fastening[]>;
  readonly endRound: () => void;
}

export function fastener(): Fastener {
  const solvers = keyedMemo<'solver', [ShopStandard], Solver>(() => memoSolver());
  const solved = keyedMemo<string, [ShopStandard, DrawerFit, Solver], Fastening>(
    (standard, fit, solve) => fastenDrawer(fit, standard, solve).value,
    { same: ([before], [after]) => before === after },
  );
  const own = keyedMemo<DrawerFit, [Fastening, DrawerFit, ShopStandard], Outcome<Fastening>>(fastenedAs);
  const memos = [solvers, solved, own];
  return {
    fasten(fits, standard) {
      const solve = solvers.get('solver', standard);
      return fastenOrder(fits, standard, (fit) => {
        const alike = solved.get(fasteningKey(fit), standard, fit, solve);
        return own.get(fit, alike, fit, standard);
      });
    },
    endRound() {
      for (const memo of memos) memo.endRound();
    },
  };
}
