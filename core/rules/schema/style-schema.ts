import type { LengthUnit } from '../../order/types.ts';
import { conditionText, lengthText, sourced, strict, words } from '../standard-fields.ts';
import { angleText } from './quantity-fields.ts';

/** Degrees. A back bevel beyond it leaves a knife's edge at the face; common practice, no source. */
const STEEPEST_BEVEL = 30;

/** The document of an overlay style. */
export function styleSchema(unit: LengthUnit) {
  const condition = sourced(conditionText(unit));
  const edge = strict({ outer: condition, shared: condition });
  const lengthOrZero = sourced(lengthText(unit, { zero: true }));
  return strict({
    name: words,
    edges: strict({ left: edge, right: edge, top: edge, bottom: edge }),
    startLow: strict({ outer: lengthOrZero, shared: lengthOrZero }),
    backBevel: sourced(angleText(0, STEEPEST_BEVEL)),
  });
}
