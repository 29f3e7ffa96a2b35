import { EDGES, type Edge } from '../../order/types.ts';
import type { ShopStandard } from '../../rules/types.ts';
import type { DrawerFit } from '../types.ts';
import { errorTerms, gapByErrors, type ErrorTerm } from './errors.ts';
import { gapLimits } from './gap-limits.ts';
import { gapGrowth, gapPlaces, type GapPlace, type Move } from './places.ts';
import { adjustersOf, rangeOf } from './adjusters.ts';
import { startMove, type RegisteredSide } from './start-move.ts';
import type { BudgetOptions, Span } from './types.ts';

/** A gap, or a lap, at a corner: `hung` + what the errors do + what the adjusters do, mm. */
export interface ModelPlace extends GapPlace {
  /** Hung exactly as designed, no adjuster touched; how far a lap opens is counted from 0. */
  readonly hung: number;
  /** Growth for each mm of each error, in the order of the model's errors. */
  readonly byError: readonly number[];
  /** null where the front laps a member. */
  readonly limits: Span | null;
}

/** One drawer as the budget sees it: plain numbers, the same for drawers that are alike. */
export interface BudgetModel {
  readonly places: readonly ModelPlace[];
  readonly errors: readonly ErrorTerm[];
  readonly side: Span;
  readonly height: Span;
  readonly start: Move;
  readonly registered: RegisteredSide;
}

/** The linear model of a drawer's gaps. */
export function budgetModel(
  fit: DrawerFit,
  standard: ShopStandard,
  { registered = 'left', gapTolerance }: Pick<BudgetOptions, 'registered' | 'gapTolerance'>,
): BudgetModel {
  const adjusters = adjustersOf(fit, standard);
  const errors = errorTerms(standard, registered);
  const start = startMove(fit, registered);
  const limits = new Map<Edge, Span | null>(
    EDGES.map((edge) => [edge, gapLimits(edge, fit, standard, gapTolerance)]),
  );
  return {
    places: gapPlaces(fit).map((place) => ({
      ...place,
      hung: (fit.gaps[place.edge] ?? 0) - gapGrowth(place, start),
      byError: gapByErrors(place, errors, fit),
      limits: limits.get(place.edge) ?? null,
    })),
    errors,
    side: rangeOf(adjusters, 'side'),
    height: rangeOf(adjusters, 'height'),
    start,
    registered,
  };
}
