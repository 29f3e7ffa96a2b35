import { z } from 'zod';
import type { LengthUnit } from '../../order/types.ts';
import { lengthText, sourced, strict } from '../standard-fields.ts';

/** The document of how pulls of one sort sit on a front. */
export function pullSchema(unit: LengthUnit) {
  const lengthOrZero = sourced(lengthText(unit, { zero: true }));
  return strict({
    holes: z.literal([1, 2]),
    centers: lengthOrZero,
    holeDiameter: sourced(lengthText(unit)),
    height: strict({ from: z.enum(['middle', 'top']), distance: lengthOrZero }),
    pairFrom: sourced(lengthText(unit)),
  });
}
