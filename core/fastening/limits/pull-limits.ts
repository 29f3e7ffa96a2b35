import { intoFrame } from '../corner-frame.ts';
import type { PlaceContext } from './place-context.ts';
import type { HoleLimit } from './types.ts';

/** The screw keeps clear of the pull's holes, which go upright through front and box front. */
export const pullLimits = ({ pullHoles, frame, screw, standard }: PlaceContext): readonly HoleLimit[] =>
  pullHoles.centers.map((center) => ({
    limit: 'pull hole',
    against: "a hole of the pull's",
    least: standard.fastening.pullRoom.value,
    center: intoFrame(frame, center),
    radii: pullHoles.diameter / 2 + screw.diameter.value / 2,
    length: screw.length.value,
  }));
