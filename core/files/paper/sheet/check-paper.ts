import type { Finding } from '../../../findings/finding.ts';
import { error } from '../../../findings/make.ts';
import { mmText } from '../../../units/mm-text.ts';
import { PAPER_LIMITS, type PaperSettings } from './settings.ts';
import { SHEET_SIZES } from './sheet-sizes.ts';

/** What is wrong with the settings of paper and printer; with a finding nothing may be printed. */
export function checkPaper(settings: PaperSettings): readonly Finding[] {
  const { margin, overlap, factors } = settings;
  return [
    ...lengthFault('margin', margin, PAPER_LIMITS.margin),
    ...lengthFault('overlap', overlap, PAPER_LIMITS.overlap),
    ...factorFault('x', factors.x),
    ...factorFault('y', factors.y),
    ...sheetFault(settings),
  ];
}

type Range = { readonly min: number; readonly max: number };

const inRange = (value: number, { min, max }: Range): boolean => value >= min && value <= max;

function lengthFault(field: 'margin' | 'overlap', value: number, range: Range): readonly Finding[] {
  if (inRange(value, range)) return [];
  const message = `The paper's ${field} is ${value} mm: write one of ${mmText(range.min)} to ${mmText(range.max)}.`;
  return [error(`paper/${field}`, message, { field }, { read: value, ...range })];
}

function factorFault(axis: 'x' | 'y', value: number): readonly Finding[] {
  const range = PAPER_LIMITS.factor;
  if (inRange(value, range)) return [];
  const message = `The printer's factor ${axis} is ${value}: write one of ${range.min} to ${range.max}, or let another printer do it.`;
  return [error('paper/factor', message, { field: `factors.${axis}` }, { read: value, ...range })];
}

function sheetFault({ sheet, margin }: PaperSettings): readonly Finding[] {
  if (sheet === 'as long as needed') return [];
  const size = typeof sheet === 'string' ? SHEET_SIZES[sheet] : sheet;
  const { leastInside, longestSide } = PAPER_LIMITS;
  return (['width', 'height'] as const).flatMap((side) => {
    const range = { min: leastInside + 2 * margin, max: longestSide };
    if (inRange(size[side], range)) return [];
    const message = `The sheet's ${side} is ${size[side]} mm: with a margin of ${mmText(margin)} write one of ${mmText(range.min)} to ${mmText(range.max)}.`;
    return [error('paper/sheet', message, { field: `sheet.${side}` }, { read: size[side], ...range })];
  });
}
