import { NO_SOURCE } from '../no-source.ts';
import { added } from './added-text.ts';

const UNKNOWN_STEP = `${NO_SOURCE}: the slide's sheet does not say; 0 means so`;

const adjuster = (least: string, most: string, source = NO_SOURCE) => ({
  least: added(least, source),
  most: added(most, source),
  step: added('0 mm', UNKNOWN_STEP),
  stepName: 'turn',
});

const none = adjuster('0 mm', '0 mm', `${NO_SOURCE}: it has none`);

/** Slides under the box, whose clips raise, move and tilt the front. */
export const UNDERMOUNT_ADJUSTERS = {
  height: adjuster('0 mm', '3 mm', `${NO_SOURCE}: it raises only`),
  side: adjuster('-1.5 mm', '1.5 mm'),
  depth: adjuster('-2 mm', '2 mm'),
  tilt: adjuster('0 mm', '3 mm', `${NO_SOURCE}: the back of the box is raised`),
} as const;

const SLOTS = `${NO_SOURCE}: upright slots in the slide's member`;

/** Slides at the sides of the box: the slots of the screws that hold them are all there is. */
export const SIDE_MOUNT_ADJUSTERS = {
  height: adjuster('-2.4 mm', '2.4 mm', SLOTS),
  side: none,
  depth: none,
  tilt: none,
} as const;
