import type { LengthUnit } from '../../order/types.ts';
import { formatLength } from '../../units/format-length.ts';
import { mixedEighths } from './mixed-eighths.ts';
import type { SteppedMove } from './steps.ts';
import type { AdjusterName } from './types.ts';

/** What a move of each adjuster does, + and -. */
const DOES: Readonly<Record<AdjusterName, readonly [string, string]>> = {
  heightLeft: ['Raise the left side', 'Lower the left side'],
  heightRight: ['Raise the right side', 'Lower the right side'],
  side: ['Move the front to the right', 'Move the front to the left'],
  depth: ['Move the front out', 'Move the front in'],
  tilt: ['Lean the top of the front out', 'Lean the top of the front in'],
};

/** `Raise the left side by 1.5 mm: 3 clicks.` */
export function moveWords(adjuster: AdjusterName, { by, steps }: SteppedMove, unit: LengthUnit): string {
  const [plus, minus] = DOES[adjuster];
  const what = `${by > 0 ? plus : minus} by ${formatLength(Math.abs(by), unit)}`;
  if (steps === null) return `${what}.`;
  const count = Math.abs(steps.count);
  return `${what}: ${mixedEighths(count)} ${steps.name}${count > 1 ? 's' : ''}.`;
}
