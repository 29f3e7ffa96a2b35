import type { EdgedWood } from '../woods.ts';
import { driverLimits, headLimits, otherScrewLimits, screwInBoxLimits } from './box-limits.ts';
import { leanLimits } from './lean-limits.ts';
import type { PlaceContext } from './place-context.ts';
import { pullLimits } from './pull-limits.ts';
import type { PlaceLimits } from './types.ts';
import { woodLimits } from './wood-limits.ts';

/** All limits of one screw in one piece of the front. */
export const limitsOf = (context: PlaceContext, wood: EdgedWood): PlaceLimits => ({
  planes: [
    ...woodLimits(context, wood),
    ...headLimits(context),
    ...screwInBoxLimits(context),
    ...driverLimits(context),
    ...otherScrewLimits(context),
  ],
  leans: leanLimits(context),
  holes: pullLimits(context),
  largestAngle: context.standard.fastening.largestAngle.value,
});
