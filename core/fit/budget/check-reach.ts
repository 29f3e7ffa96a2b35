import type { Finding } from '../../findings/finding.ts';
import { formatLength } from '../../units/format-length.ts';
import { fitWarning } from '../fit-finding.ts';
import { fallsShort } from './falls-short.ts';
import type { AdjustmentBudget, TightLimits } from './types.ts';

/** A warning where the adjusters alone do not bring a front in, or may well not. */
export function checkReach(budget: AdjustmentBudget): readonly Finding[] {
  const { fit, margin, dominant, reach } = budget;
  if (margin === null) return [];
  const { nominal, likely } = margin;
  const mm = (value: number) => formatLength(value, fit.unit);
  const warn = (words: string, { slack, limits }: TightLimits) =>
    fitWarning('unreachable', words, {
      drawer: fit.drawer,
      values: { short: -slack, limits: limits.join('; ') },
    });
  if (fallsShort(nominal.slack)) {
    return [
      warn(
        `the ${fit.rules.slideName} slide's adjusters cannot bring the front into its gaps even when everything is made to size: ${mm(-nominal.slack)} is missing between ${told(nominal)}; a slide with more range, a smaller front, or less start-low allowance would do`,
        nominal,
      ),
    ];
  }
  if (!fallsShort(likely.slack)) return [];
  const share =
    dominant === null ? '' : `, most of it (${percent(dominant.share)}) from the ${dominant.source}`;
  const rework = reach === null ? '' : `; ${percent(1 - reach.share)} of such fronts will need rework`;
  return [
    warn(
      `the ${fit.rules.slideName} slide's adjusters may not bring the front into its gaps: ${mm(-likely.slack)} is missing at three standard deviations between ${told(likely)}${share}${rework}; a tighter tolerance there, or a slide with more range, would do`,
      likely,
    ),
  ];
}

const told = ({ limits }: TightLimits): string => limits.join(', ');

const percent = (share: number): string =>
  share < 0.1 ? `${(100 * share).toFixed(1)} %` : `${Math.round(100 * share)} %`;
