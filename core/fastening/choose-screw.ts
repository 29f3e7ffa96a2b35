import type { DrawerContext } from './drawer-context.ts';
import { leansAllow } from './leans-allow.ts';
import { placeScrews } from './place-screws.ts';
import type { PlacedScrews } from './place-screws.ts';
import type { Solver } from './solver.ts';

/** mm and degrees that two screws may differ by and still be called alike; the stock's order then decides. */
const ALIKE = 1e-6;

/**
 * The screw of the stock that suits a drawer best: in all corners, then in all places between them, then holding
 * the pull, then with the least lean in all, then with the largest least margin, then holding most. Null: none is
 * in all corners. Straight places are tried first, for nothing is better than a screw that is straight in all.
 */
export function chooseScrew(context: DrawerContext, solve: Solver): PlacedScrews | null {
  const { stock, pull } = context.standard.fastening;
  const best = (lean: 'straight' | 'any'): PlacedScrews | null =>
    stock
      .filter((screw) => leansAllow(context, screw, lean))
      .map((screw) => placeScrews(context, screw, solve, lean))
      .filter(({ failed }) => failed.every(({ index }) => index > 0))
      .reduce<PlacedScrews | null>((a, b) => (a === null || isBetter(b, a, pull.value) ? b : a), null);
  const straight = best('straight');
  return straight !== null && straight.failed.length === 0 && straight.capacity >= pull.value
    ? straight
    : best('any');
}

function isBetter(a: PlacedScrews, b: PlacedScrews, pull: number): boolean {
  for (const score of SCORES) {
    const [one, other] = [score(a, pull), score(b, pull)];
    if (Math.abs(one - other) > ALIKE) return one > other;
  }
  return false;
}

/** What a screw is judged by, more being better. */
const SCORES: readonly ((placed: PlacedScrews, pull: number) => number)[] = [
  ({ failed }) => -failed.length,
  ({ capacity }, pull) => (capacity >= pull ? 1 : 0),
  ({ places }) => -places.reduce((sum, { angle }) => sum + angle, 0),
  ({ tightest }) => tightest?.over ?? 0,
  ({ capacity }) => capacity,
];
