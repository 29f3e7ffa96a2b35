import { hangingOf, sidewaysOf, type HangingUse } from '../jigs/sharing/hung-by.ts';
import { formatLength } from '../units/format-length.ts';
import type { LengthUnit } from '../units/unit.ts';

/** What shared jigs do to a drawer: `Shared jigs (B6) hang this front 1/16" lower than its own would; ...`; null for nothing. */
export function hangingWords(uses: readonly HangingUse[], unit: LengthUnit): string | null {
  const hanging = hangingOf(uses);
  const [low, right] = [hanging.off.bottom, -sidewaysOf(hanging)];
  const length = (mm: number) => formatLength(Math.abs(mm), unit);
  const told = [
    ...(low === 0 ? [] : [`${length(low)} ${low > 0 ? 'lower' : 'higher'}`]),
    ...(right === 0 ? [] : [`${length(right)} further to the ${right > 0 ? 'right' : 'left'}`]),
  ];
  if (told.length === 0) return null;
  const off = uses.filter(({ jigId, adjustment }) => adjustment !== 0 && hanging.jigIds.includes(jigId));
  const ids = [...new Set(off.map(({ jigId }) => jigId))];
  return `Shared jigs (${ids.join(', ')}) hang this front ${told.join(' and ')} than its own would; these settings put that right.`;
}
