import type { LengthUnit } from '../../order/types.ts';
import { formatLength } from '../../units/format-length.ts';
import type { Bound } from './reach-lines.ts';

/** `left gap at the top not below 1/32"`, `side adjuster at its upper end` */
export function limitWords({ place, end }: Bound['limit'], unit: LengthUnit): string {
  if (typeof place === 'string') return `${place} adjuster at its ${end === 'least' ? 'lower' : 'upper'} end`;
  const { edge, corner, limits } = place;
  const atSide = edge === 'left' || edge === 'right';
  const where = atSide ? oneOf(corner, 'top', 'bottom') : oneOf(corner, 'Left', 'Right');
  const value = formatLength(limits?.[end] ?? 0, unit);
  return `${edge} gap at the ${where} not ${end === 'least' ? 'below' : 'above'} ${value}`;
}

const oneOf = (corner: string, ...words: readonly string[]): string =>
  (words.find((word) => corner.includes(word)) ?? '').toLowerCase();
