import type { Edge } from '../../order/types.ts';

/** Which way a front must go that a shared jig has hung: the overhang wanted less the one got (mm), told as a move. */
export function dialWay(edge: Edge, adjustment: number): 'up' | 'down' | 'left' | 'right' | 'stays' {
  if (adjustment === 0) return 'stays';
  const towards = { bottom: 'down', top: 'up', left: 'left', right: 'right' } as const;
  const away = { bottom: 'up', top: 'down', left: 'right', right: 'left' } as const;
  return adjustment > 0 ? towards[edge] : away[edge];
}
