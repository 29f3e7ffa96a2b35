import { stacker } from '../../fit/budget/stack.ts';
import type { BudgetModel } from '../../fit/budget/model.ts';
import type { Edge } from '../../order/types.ts';

/** How far a jig may set an overhang too small and too large, mm, both 0 or more. */
export interface Room {
  readonly less: number;
  readonly more: number;
}

/**
 * How far a jig may be off at an edge that laps a member and shows no gap; null for one that has a gap. Nobody
 * measures a lap, so it may stay off by `tolerance`; the rest is the adjuster's, as far as it reaches from its
 * usual start after what the tolerances are likely to ask of it there (root sum square). Where they ask for
 * more than it has, nothing of it is left, but the lap's own tolerance is.
 *
 * A jig of more overhang hangs the front further out on its side: lower at the bottom, so that the height
 * adjuster, which may only raise, has more to raise; with less overhang it has less, down to nothing.
 */
export function lapRoom(
  edge: Edge,
  model: BudgetModel,
  tolerance: number,
  /** Whether more overhang asks the adjuster for a greater move. */
  rises: boolean,
): Room | null {
  const places = model.places.filter((place) => place.edge === edge);
  if (places.some(({ limits }) => limits !== null)) return null;
  const { likely } = stacker(model.errors.map((error) => error.tolerance));
  const spread = Math.max(...places.map(({ byError }) => likely(byError)));
  const isSide = edge === 'left' || edge === 'right';
  const available = isSide ? model.side : model.height;
  const start = isSide ? model.start.side : model.start.heightLeft;
  const left = (reach: number): number => tolerance + Math.max(0, reach - spread);
  const [up, down] = [left(available.most - start), left(start - available.least)];
  return rises ? { less: down, more: up } : { less: up, more: down };
}
