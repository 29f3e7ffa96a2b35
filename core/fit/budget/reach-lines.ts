import type { BudgetModel, ModelPlace } from './model.ts';
import type { Span } from './types.ts';

/** A limit on how the front may stand: a bound on a sideways or upward move that depends on the turn. */
export interface Bound {
  /** In words for people. */
  readonly limit: {
    readonly place: ModelPlace | 'side' | 'left height' | 'right height';
    readonly end: 'least' | 'most';
  };
  /** A gap's limit can be kept with more or less slack; an adjuster's end is where it is. */
  readonly weight: 0 | 1;
  /** The bound is constant + perError . errors + slope * turn, mm. */
  readonly constant: number;
  readonly perError: readonly number[];
  readonly slope: number;
}

/** Bounds on one move: it must lie above all lower and below all upper ones. */
export interface BoundGroup {
  readonly lower: readonly Bound[];
  readonly upper: readonly Bound[];
}

/**
 * What all limits ask of the sideways move and of the mean of the two heights, when the front is turned by
 * `turn` = right height - left height. A turn is possible if in both groups no lower bound is above an upper
 * one: with the two moves eliminated so (Fourier and Motzkin), only the turn is left.
 */
export function boundGroups({ places, side, height, errors }: BudgetModel): readonly BoundGroup[] {
  const none = errors.map(() => 0);
  const adjuster = (
    place: 'side' | 'left height' | 'right height',
    span: Span,
    slope: number,
  ): BoundGroup => {
    const bound = (end: 'least' | 'most'): Bound => ({
      limit: { place, end },
      weight: 0,
      constant: span[end],
      perError: none,
      slope,
    });
    return { lower: [bound('least')], upper: [bound('most')] };
  };
  const gaps = (edges: readonly string[]) =>
    places.filter(({ edge }) => edges.includes(edge)).flatMap((place) => ofGap(place) ?? []);
  return [
    joined([adjuster('side', side, 0), ...gaps(['left', 'right'])]),
    joined([
      adjuster('left height', height, 0.5),
      adjuster('right height', height, -0.5),
      ...gaps(['bottom', 'top']),
    ]),
  ];
}

/** gap = hung + errors + sign * (move + turning * turn), between its limits. */
function ofGap(place: ModelPlace): BoundGroup | undefined {
  const { limits, hung, byError, by } = place;
  if (limits === null) return undefined;
  const sign = place.edge === 'left' || place.edge === 'bottom' ? 1 : -1;
  // Half of a turn lowers the left and half of it raises the right.
  const turning = (sign * (by.heightRight - by.heightLeft)) / 2;
  const bound = (end: 'least' | 'most'): Bound => ({
    limit: { place, end },
    weight: 1,
    constant: sign * (limits[end] - hung),
    perError: byError.map((growth) => -sign * growth || 0),
    slope: -turning || 0,
  });
  const [least, most] = [bound('least'), bound('most')];
  return sign === 1 ? { lower: [least], upper: [most] } : { lower: [most], upper: [least] };
}

const joined = (groups: readonly BoundGroup[]): BoundGroup => ({
  lower: groups.flatMap(({ lower }) => lower),
  upper: groups.flatMap(({ upper }) => upper),
});
