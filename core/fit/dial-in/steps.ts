import type { AdjusterRange } from '../../rules/types.ts';
import type { Span } from '../budget/types.ts';

/** A hand sets a turn to an eighth of it (common practice, no source); clicks and the like are whole. */
const PARTS_OF_A_TURN = 8;

/** Added before cutting off, so that float noise takes no step away. */
const NOISE = 1e-9;

/** A move in the steps that a hand can make, nearest to `exact` within `room`. */
export interface SteppedMove {
  readonly by: number;
  readonly steps: { readonly count: number; readonly name: string } | null;
}

/** Rounds a move of an adjuster to its steps; where the slide's data gives none it stays as it is, mm. */
export function inSteps(exact: number, { step, stepName }: AdjusterRange, room: Span): SteppedMove {
  if (step.value <= 0) return { by: exact, steps: null };
  const parts = stepName === 'turn' ? PARTS_OF_A_TURN : 1;
  const unit = step.value / parts;
  const most = Math.floor(room.most / unit + NOISE);
  const least = Math.ceil(room.least / unit - NOISE);
  const whole = Math.min(most, Math.max(least, Math.round(exact / unit)));
  const count = whole / parts || 0;
  return { by: count * step.value, steps: { count, name: stepName } };
}
