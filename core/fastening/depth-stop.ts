import type { DrawerFit } from '../fit/types.ts';
import type { Holes, ScrewPlace } from './types.ts';

/**
 * How far the drill bit stands out of its stop collar for the pilot of one place, mm: through the guide's plate
 * along the slanted bore, and on as far as the screw is long from the inside of the box front to its tip, which
 * is the same however it leans.
 */
export const depthStop = (
  { angle }: Pick<ScrewPlace, 'angle'>,
  { pilotDepth }: Pick<Holes, 'pilotDepth'>,
  { boxFront }: Pick<DrawerFit, 'boxFront'>,
  guideThickness: number,
): number => guideThickness / Math.cos((angle * Math.PI) / 180) + boxFront + pilotDepth;
