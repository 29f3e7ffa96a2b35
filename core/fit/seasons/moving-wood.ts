import { frameWidths } from '../../order/frame-widths.ts';
import type { FrontWood } from '../../rules/wood-types.ts';
import type { DrawerFit } from '../types.ts';
import type { MovingWood } from './types.ts';

/**
 * The wood that moves across the width and the height of a front. Along the grain wood keeps its length and
 * sheet goods keep theirs in every direction (common practice, no source: both move by less than a tenth of
 * solid wood across the grain).
 *
 * | front                 | width      | height     |
 * |-----------------------|------------|------------|
 * | panel                 | none       | none       |
 * | solid, grain upright  | all of it  | none       |
 * | solid, grain level    | none       | all of it  |
 * | five-piece            | two stiles | two rails  |
 *
 * A five-piece front's own panel floats in its groove.
 */
export function movingWood(
  { drawer, frontW, frontH }: DrawerFit,
  { slab, grain }: Pick<FrontWood, 'slab' | 'grain'>,
): MovingWood {
  const { front } = drawer;
  if (front.kind === 'five-piece') {
    const { stile, rail } = frameWidths(front);
    return { width: 2 * stile, height: 2 * rail };
  }
  if (slab.value === 'panel') return { width: 0, height: 0 };
  return grain.value === 'vertical' ? { width: frontW, height: 0 } : { width: 0, height: frontH };
}
