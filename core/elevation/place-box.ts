import type { PlacedDrawer } from '../fit/layout.ts';
import type { Placed } from '../fit/types.ts';

/**
 * The box of a drawer after dialling in: in the middle of its opening, raised from the slide's lowest
 * setting by the start-low allowance, so that the front's bottom edge meets its line.
 */
export function placeBox({ fit, opening }: PlacedDrawer): Placed {
  const { boxW, boxH, rules } = fit;
  const bottom = opening.y + opening.h - rules.lift.value - rules.startLow.value;
  return { x: opening.x + (opening.w - boxW) / 2, y: bottom - boxH, w: boxW, h: boxH };
}
