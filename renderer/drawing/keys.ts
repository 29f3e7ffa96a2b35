import type { Drawing } from './useDrawing.ts';

/** Pixels that one press of an arrow moves the picture. */
const STEP = 60;

/** Enlargement of one press. */
export const ZOOM_STEP = 1.4;

/**
 * Moves or enlarges a drawing by a key: + and -, 0 for all of it, arrows to look further that way. Returns
 * whether the key meant anything.
 */
export function drawingKey(key: string, drawing: Drawing): boolean {
  const moves: Readonly<Record<string, () => void>> = {
    '+': () => drawing.zoomBy(ZOOM_STEP),
    '=': () => drawing.zoomBy(ZOOM_STEP),
    '-': () => drawing.zoomBy(1 / ZOOM_STEP),
    '0': () => drawing.showAll(),
    ArrowLeft: () => drawing.panBy(STEP, 0),
    ArrowRight: () => drawing.panBy(-STEP, 0),
    ArrowUp: () => drawing.panBy(0, STEP),
    ArrowDown: () => drawing.panBy(0, -STEP),
  };
  const move = moves[key];
  move?.();
  return move !== undefined;
}
