import type { LengthUnit } from '../../order/types.ts';
import { lengthText, sourced, strict, words } from '../standard-fields.ts';

// Which members may be 0 depends on the construction: `checkStandard` tells.
const memberWidth = (unit: LengthUnit) => sourced(lengthText(unit, { zero: true }));

/** The document of the widths of a cabinet's members. */
export function membersSchema(unit: LengthUnit) {
  const width = memberWidth(unit);
  return strict({
    stile: width,
    'shared-stile': width,
    'top-rail': width,
    'mid-rail': width,
    'bottom-rail': width,
  });
}

/** The document of what a kind of cabinet has that differs from the standard. */
export function kindSchema(unit: LengthUnit) {
  const width = memberWidth(unit).exactOptional();
  const members = strict({
    stile: width,
    'shared-stile': width,
    'top-rail': width,
    'mid-rail': width,
    'bottom-rail': width,
  });
  return strict({ members, slide: words.exactOptional() });
}
