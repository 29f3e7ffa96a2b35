import type { DrawerFit } from '../../../fit/types.ts';
import { bevelSetback } from '../../../jigs/lip.ts';
import type { Box } from '../page/types.ts';

/** The outlines of a template in the back view, mm; origin at the lower left corner of the face outline. */
export interface TemplateGeometry {
  readonly face: Box;
  /** The edge of the back, where the paper folds down; inside the face outline where edges are bevelled. */
  readonly back: Box;
  readonly box: Box;
  /** How far the paper hangs down over the front's edges; 0 where the front is too thin for it. */
  readonly strip: number;
}

/** mm. The widest strip, what it stays clear of the bench, and the least that can be folded; common practice, no source. */
const STRIP = { most: 15, clear: 3, least: 5 } as const;

/** Where front and box are; a front of another width than derived has its box in the middle of what is left. */
export function templateGeometry(fit: DrawerFit): TemplateGeometry {
  const { frontW, frontH, boxW, boxH, overhang, frontThickness } = fit;
  const inset = bevelSetback({ frontThickness, backBevel: fit.rules.backBevel.value }, 0);
  const strip = Math.min(STRIP.most, frontThickness - STRIP.clear);
  const spare = frontW - boxW - overhang.left - overhang.right;
  return {
    face: { x: 0, y: 0, w: frontW, h: frontH },
    back: { x: inset, y: inset, w: frontW - 2 * inset, h: frontH - 2 * inset },
    box: { x: overhang.right + spare / 2, y: overhang.bottom, w: boxW, h: boxH },
    strip: strip < STRIP.least ? 0 : strip,
  };
}
