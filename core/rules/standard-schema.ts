import { z } from 'zod';
import type { LengthUnit } from '../order/types.ts';
import { bevelText, conditionText, lengthText, sourced, strict, words } from './standard-fields.ts';

export const STANDARD_FORMAT = 'overhang-standard';
export const STANDARD_VERSION = 1;

/**
 * The document of a shop standard, decoded: every value is text that people can edit beside its source,
 * `{ "value": "1-1/2 in", "source": "..." }`; bare numbers are in `unit`, which the document states.
 */
export function standardSchema(unit: LengthUnit) {
  const length = sourced(lengthText(unit));
  const lengthOrZero = sourced(lengthText(unit, { zero: true }));
  const condition = sourced(conditionText(unit));
  const edge = strict({ outer: condition, shared: condition });
  const style = strict({
    name: words,
    edges: strict({ left: edge, right: edge, top: edge, bottom: edge }),
    startLow: strict({ outer: lengthOrZero, shared: lengthOrZero }),
    backBevel: sourced(bevelText),
  });
  const slide = strict({
    runningClearance: lengthOrZero,
    lift: lengthOrZero,
    topClearance: lengthOrZero,
    sideMember: lengthOrZero,
    widthTolerance: lengthOrZero,
  });
  // Which members may be 0 depends on the construction: `checkStandard` tells.
  const members = {
    stile: lengthOrZero,
    'shared-stile': lengthOrZero,
    'top-rail': lengthOrZero,
    'mid-rail': lengthOrZero,
    'bottom-rail': lengthOrZero,
  };
  const kind = strict({
    members: strict({
      stile: members.stile.exactOptional(),
      'shared-stile': members['shared-stile'].exactOptional(),
      'top-rail': members['top-rail'].exactOptional(),
      'mid-rail': members['mid-rail'].exactOptional(),
      'bottom-rail': members['bottom-rail'].exactOptional(),
    }),
    slide: words.exactOptional(),
  });
  const tolerance = strict({
    value: lengthText(unit, { zero: true }),
    distribution: z.enum(['normal', 'uniform', 'triangular']),
    source: words,
  });
  return strict({
    format: z.literal(STANDARD_FORMAT),
    version: z.literal(STANDARD_VERSION),
    name: words,
    note: z.string(),
    unit: z.enum(['in', 'mm']),
    construction: z.enum(['face frame', 'frameless']),
    members: strict(members),
    slides: z.record(words, slide),
    slide: words,
    styles: z.array(style),
    cabinetKinds: z.record(words, kind),
    front: strict({ thickness: length }),
    box: strict({ sideThickness: length, frontThickness: length }),
    limits: strict({ smallestGap: lengthOrZero, sizeDifference: lengthOrZero }),
    tolerances: strict({
      opening: tolerance,
      box: tolerance,
      front: tolerance,
      jig: tolerance,
      seating: tolerance,
      slide: tolerance,
    }),
  });
}
