import type { Edge, LengthUnit } from '../../order/types.ts';
import { formatLength } from '../../units/format-length.ts';

/** Which way a front must go that a shared jig has hung: the overhang wanted less the one got (mm), told as a move. */
function dialWay(edge: Edge, adjustment: number): 'up' | 'down' | 'left' | 'right' | 'stays' {
  if (adjustment === 0) return 'stays';
  const towards = { bottom: 'down', top: 'up', left: 'left', right: 'right' } as const;
  const away = { bottom: 'up', top: 'down', left: 'right', right: 'left' } as const;
  return adjustment > 0 ? towards[edge] : away[edge];
}

/** `0.8 mm down`, `1/32" to the left`; empty where nothing is left to adjust. */
export function adjustWords(edge: Edge, adjustment: number, unit: LengthUnit): string {
  const way = dialWay(edge, adjustment);
  if (way === 'stays') return '';
  const to = way === 'left' || way === 'right' ? `to the ${way}` : way;
  return `${formatLength(Math.abs(adjustment), unit)} ${to}`;
}
