import type { Fastening } from '../fastening/types.ts';
import { fastenDrawer } from '../fastening/fasten-drawer.ts';
import { fasteningKey } from '../fastening/fastening-key.ts';
import { memoSolver, type Solver } from '../fastening/solver.ts';
import type { Outcome } from '../findings/finding.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { fasteningFindings } from '../fastening/fastening-findings.ts';
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
  const told = keyedMemo<DrawerFit, [Fastening, ShopStandard], Outcome<Fastening>>((alike, standard) => ({
    value: alike,
    findings: fasteningFindings(alike, standard),
  }));
  const own = keyedMemo<DrawerFit, [DrawerFit, Fastening], Fastening>((fit, alike) => ({ ...alike, fit }));
  const memos = [solvers, solved, own, told];
  return {
    fasten(fits, standard) {
      const solve = solvers.get('solver', standard);
      const outcomes = fits.map((fit) => {
        const alike = solved.get(fasteningKey(fit), standard, fit, solve);
        return told.get(fit, own.get(fit, fit, alike), standard);
      });
      return {
        value: outcomes.map(({ value }) => value),
        findings: outcomes.flatMap(({ findings }) => findings),
      };
    },
    endRound() {
      for (const memo of memos) memo.endRound();
    },
  };
}
