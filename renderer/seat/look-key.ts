import { moveBy, turnBy, type Sight } from './look.ts';
import type { SeatAction } from './seat-state.ts';

/** Degrees, and share of half the picture, of one press. */
const TURN = 10;
const MOVE = 0.15;

export const ENLARGE = 1.25;

interface Pressed {
  readonly key: string;
  readonly shiftKey: boolean;
}

/** What a key does to the look: arrows turn, with Shift they move, + and - enlarge, 0 shows all; else null. */
export function lookKey({ key, shiftKey }: Pressed, sight: Sight): SeatAction | null {
  if (key === '+' || key === '=') return { do: 'enlarge', by: ENLARGE };
  if (key === '-') return { do: 'enlarge', by: 1 / ENLARGE };
  if (key === '0') return { do: 'show all' };
  const arrows: Readonly<Record<string, readonly [number, number]>> = {
    ArrowLeft: [-1, 0],
    ArrowRight: [1, 0],
    ArrowUp: [0, 1],
    ArrowDown: [0, -1],
  };
  const arrow = arrows[key];
  if (arrow === undefined) return null;
  const [x, y] = arrow;
  if (shiftKey) {
    const by = (sight.half.up * MOVE) / sight.enlarged;
    return moveBy(x * by, y * by);
  }
  return turnBy(sight, x * TURN, y * TURN);
}
