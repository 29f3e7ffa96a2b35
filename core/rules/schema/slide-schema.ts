import type { LengthUnit } from '../../order/types.ts';
import { lengthText, sourced, strict, words } from '../standard-fields.ts';

/** The document of a pair of slides: the room that it needs and what its adjusters can do. */
export function slideSchema(unit: LengthUnit) {
  const lengthOrZero = sourced(lengthText(unit, { zero: true }));
  const signed = sourced(lengthText(unit, { sign: 'any' }));
  const adjuster = strict({ least: signed, most: signed, step: lengthOrZero, stepName: words });
  return strict({
    runningClearance: lengthOrZero,
    lift: lengthOrZero,
    topClearance: lengthOrZero,
    sideMember: lengthOrZero,
    widthTolerance: lengthOrZero,
    adjusters: strict({ height: adjuster, side: adjuster, depth: adjuster, tilt: adjuster }),
  });
}
