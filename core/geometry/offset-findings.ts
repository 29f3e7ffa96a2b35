import type { Finding } from '../findings/finding.ts';
import { error, warning } from '../findings/make.ts';

/** Nothing is left because the outline is thin; true, but whoever counts on a cut there must know. */
export const offsetVanished = (distance: number): Finding =>
  warning(
    'geometry/offset-vanished',
    `The outline is nowhere wider than ${2 * Math.abs(distance)} mm: offset by ${distance} mm nothing is left.`,
    {},
    { distance },
  );

/** Something should be left and could not be found. */
export const offsetFailed = (distance: number): Finding =>
  error(
    'geometry/offset-failed',
    `The outline could not be offset by ${distance} mm; change its size or the distance a little.`,
    {},
    { distance },
  );

/** The fine polyline had to serve. */
export const offsetApproximate = (distance: number): Finding =>
  warning(
    'geometry/offset-approximate',
    `An outline offset by ${distance} mm is drawn in short straight sides instead of arcs.`,
    {},
    { distance },
  );
