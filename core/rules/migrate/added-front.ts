import type { LengthUnit } from '../../order/types.ts';
import { NO_SOURCE } from '../no-source.ts';
import { added } from './added-text.ts';

const INDOORS =
  'Wood Handbook GTR-190, Table 13-2, from memory: wood indoors in most of the USA has 6 to 10 % of moisture, on average 8 %';

/** What fronts are made of, and the groove of a five-piece front of the usual thickness. */
export function addedFront(unit: LengthUnit) {
  const either = (inches: string, metric: string, source = NO_SOURCE) =>
    added(unit === 'in' ? inches : metric, source);
  const air = (humidity: string) => ({
    humidity: added(humidity, `${INDOORS}; Table 4-2 has that at this humidity`),
    temperature: either('70 F', '21 C'),
  });
  return {
    wood: {
      species: added('hard maple'),
      slab: added('panel'),
      grain: added('horizontal'),
      sawn: added('flatsawn', `${NO_SOURCE}: what is sold without a word on it`),
      dry: air('30 %'),
      damp: air('55 %'),
      shop: air('40 %'),
    },
    groove: {
      depth: either('3/8 in', '10 mm'),
      behind: either('1/4 in', '6.5 mm'),
      width: either('1/4 in', '6 mm'),
    },
  };
}
