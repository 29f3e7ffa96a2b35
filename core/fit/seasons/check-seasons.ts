import type { Finding } from '../../findings/finding.ts';
import type { Edge } from '../../order/types.ts';
import { formatLength } from '../../units/format-length.ts';
import { SAME_LENGTH } from '../../units/tolerances.ts';
import { INCH } from '../../units/inch-fraction.ts';
import { fitWarning } from '../fit-finding.ts';
import type { SeasonBudget } from './types.ts';

interface Wanted {
  readonly name: string;
  readonly smallest: number;
}

/** A warning where the front's growth closes a gap below the shop's smallest, with the gap that would do. */
export function checkSeasons(
  edge: Edge,
  budget: SeasonBudget,
  { name, smallest }: Wanted,
): readonly Finding[] {
  const { fit, fittedAt, dry, damp, recommended } = budget;
  const [fitted, wanted] = [fit.gaps[edge], recommended[edge]];
  const [inDry, inDamp] = [dry.gaps[edge], damp.gaps[edge]];
  if (fitted === null || wanted === null || inDry === null || inDamp === null) return [];
  // What is too small before it has moved is told as fit/gap-small.
  if (wanted - smallest <= SAME_LENGTH) return [];
  const [season, least, moisture] =
    inDamp <= inDry ? (['damp', inDamp, damp.moisture] as const) : (['dry', inDry, dry.moisture] as const);
  const mm = (value: number) => formatLength(value, fit.unit);
  const does =
    least < 0
      ? `binds at its ${edge} edge in ${season} air: it grows ${mm(-least)} past its ${mm(fitted)} gap`
      : `closes its ${edge} gap of ${mm(fitted)} to ${mm(least)} in ${season} air, below the shop standard's smallest of ${mm(smallest)}`;
  return [
    fitWarning(
      'season-bind',
      `the front of ${name} ${does} (from ${percent(fittedAt)} to ${percent(moisture)} moisture content); a gap of ${mm(roundedUp(wanted, fit))} would not`,
      {
        drawer: fit.drawer,
        column: edge,
        values: { edge, gap: fitted, least, smallest, recommended: wanted },
      },
    ),
  ];
}

const percent = (moisture: number): string => `${moisture.toFixed(1)} %`;

/** Up to the next sixty-fourth of an inch or tenth of a millimetre: what a shop can set. */
function roundedUp(mm: number, { unit }: SeasonBudget['fit']): number {
  const step = unit === 'in' ? INCH / 64 : 0.1;
  return Math.ceil(mm / step - SAME_LENGTH) * step;
}
