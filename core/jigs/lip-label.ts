import type { roomBetween } from './joint.ts';
import { LIP_MIDDLE } from './proportions.ts';
import type { Label } from './types.ts';

/** mm. What the dust layer leaves of a lip's width, less a margin; common practice, no source. */
export const LIP_LABEL_HEIGHT = 12;

/** Text along the middle of a lip, in a stretch without holes: from `roomBetween`, or `x` and `width` in mm. */
export const lipLabel = (
  phrases: readonly string[],
  { x, width }: ReturnType<typeof roomBetween>,
): Label => ({ phrases, center: { x, y: LIP_MIDDLE }, width, height: LIP_LABEL_HEIGHT });
