import type { SeasonBudget } from '../fit/seasons/types.ts';
import { EDGES, type Edge } from '../order/types.ts';
import { INCH } from '../units/inch-fraction.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import type { LengthUnit } from '../units/unit.ts';

/** The gap of an edge over the year, mm. */
export interface SeasonRow {
  readonly edge: Edge;
  /** Below 0 the front is past its gap: it binds. */
  readonly dry: number;
  readonly fitted: number;
  readonly damp: number;
  /** The gap to fit it with instead, up to what a shop can set; null where it is large enough. */
  readonly recommended: number | null;
}

/** Whether a front keeps its size over the year, as sheet goods do. */
export const staysPut = ({ moving }: SeasonBudget): boolean => moving.width === 0 && moving.height === 0;

/** The edges that show a gap. */
export const seasonTable = (season: SeasonBudget, unit: LengthUnit): readonly SeasonRow[] =>
  EDGES.flatMap((edge): readonly SeasonRow[] => {
    const [dry, fitted, damp] = [season.dry.gaps[edge], season.fit.gaps[edge], season.damp.gaps[edge]];
    if (dry === null || fitted === null || damp === null) return [];
    const wanted = season.recommended[edge];
    return [{ edge, dry, fitted, damp, recommended: wanted === null ? null : settable(wanted, unit) }];
  });

/** Up to the next sixty-fourth of an inch or tenth of a millimetre. */
function settable(mm: number, unit: LengthUnit): number {
  const step = unit === 'in' ? INCH / 64 : 0.1;
  return Math.ceil(mm / step - SAME_LENGTH) * step;
}
