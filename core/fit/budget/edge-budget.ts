import type { Edge } from '../../order/types.ts';
import type { BudgetModel, ModelPlace } from './model.ts';
import type { Simulated } from './simulate.ts';
import { sourceShares } from './source-shares.ts';
import { stacker } from './stack.ts';
import type { EdgeBudget, Span, Stacked } from './types.ts';

/** One edge by itself, at the corner where its gap can be off the most. */
export function edgeBudget(edge: Edge, model: BudgetModel, simulated: Simulated | null): EdgeBudget {
  const [first, ...rest] = model.places
    .map((place, index) => {
      const sampled = simulated?.spread[index] ?? null;
      return { place, sampled, spread: spreadOf(place, model, sampled?.value ?? null) };
    })
    .filter(({ place }) => place.edge === edge);
  if (first === undefined) throw new RangeError(`edgeBudget: no place at the ${edge} edge`);
  const { place, spread, sampled } = rest.reduce(
    (worst, one) => (one.spread.worst > worst.spread.worst ? one : worst),
    first,
  );
  const available = edge === 'left' || edge === 'right' ? model.side : model.height;
  const shares = sourceShares(model.errors, place.byError);
  const { limits, hung } = place;
  const simulatedWithin = sampled === null ? null : { least: sampled.least, most: sampled.most };
  const common = { spread, simulatedWithin, available, shares };
  if (limits === null) return { ...common, hung: null, limits: null, needed: null, margin: null };
  const needed = eachOf(spread, (off) => neededMove(edge, hung, limits, off));
  const margin = eachOf(needed, ({ least, most }) =>
    Math.min(available.most - most, least - available.least),
  );
  return { ...common, hung, limits, needed, margin };
}

function spreadOf(
  { byError }: ModelPlace,
  { errors }: BudgetModel,
  simulated: number | null,
): Stacked<number> {
  const { worst, likely } = stacker(errors.map(({ tolerance }) => tolerance));
  return { worst: worst(byError), likely: likely(byError), simulated };
}

/**
 * The reach that brings a gap within its limits wherever it is within ±`off` of where it hangs. The move must
 * be able to get as high as `most` and as low as `least`; where the limits are wider apart than the gap can
 * stray, `most` is below `least`, and any setting between them will do.
 */
function neededMove(edge: Edge, hung: number, limits: Span, off: number): Span {
  return edge === 'left' || edge === 'bottom'
    ? { least: limits.most - hung - off, most: limits.least - hung + off }
    : { least: hung - off - limits.least, most: hung + off - limits.most };
}

const eachOf = <A, B>({ worst, likely, simulated }: Stacked<A>, of: (value: A) => B): Stacked<B> => ({
  worst: of(worst),
  likely: of(likely),
  simulated: simulated === null ? null : of(simulated),
});
