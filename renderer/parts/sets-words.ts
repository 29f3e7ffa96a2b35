import type { LengthUnit } from '../../core/order/types.ts';
import type { Part } from '../../core/parts/types.ts';
import { formatLength } from '../../core/units/format-length.ts';

/** What a jig sets, in words: `Sets bottom 1 1/16"; left or right 1 3/8" (back bevel 3°)`. */
export function setsWords(sets: Part['sets'], unit: LengthUnit): string {
  if (sets.length === 0) return 'Sets no overhang';
  const words = sets.map(({ edges, overhang, backBevel }) => {
    const bevel = backBevel === 0 ? '' : ` (back bevel ${backBevel}°)`;
    return `${edges.join(' or ')} ${formatLength(overhang, unit)}${bevel}`;
  });
  return `Sets ${[...new Set(words)].join('; ')}`;
}
