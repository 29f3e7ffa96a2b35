import type { LengthUnit } from '../order/types.ts';
import { formatLength } from '../units/format-length.ts';
import type { Jig } from './types.ts';

/** What a jig sets, for people: `left or right 1 7/16", left or right 7/8"`. */
export const settingsText = (jig: Jig, unit: LengthUnit): string =>
  jig.seats
    .flatMap(({ sets }) => sets)
    .map(
      ({ edges, overhang, backBevel, frontThickness }) =>
        `${edges.join(' or ')} ${formatLength(overhang, unit)}${backBevel === 0 ? '' : ` (back bevel ${backBevel}°, front ${formatLength(frontThickness, unit)})`}`,
    )
    .join(', ');
