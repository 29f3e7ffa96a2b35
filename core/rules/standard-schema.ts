import { z } from 'zod';
import type { LengthUnit } from '../order/types.ts';
import { fasteningSchema } from './schema/fastening-schema.ts';
import { kindSchema, membersSchema } from './schema/member-schema.ts';
import { pullSchema } from './schema/pull-schema.ts';
import { slideSchema } from './schema/slide-schema.ts';
import { styleSchema } from './schema/style-schema.ts';
import { frontWoodSchema, panelGrooveSchema, speciesSchema } from './schema/wood-schema.ts';
import { lengthText, sourced, strict, words } from './standard-fields.ts';

export const STANDARD_FORMAT = 'overhang-standard';
export const STANDARD_VERSION = 2;

/**
 * The document of a shop standard, both ways: every value is text that people can edit beside its source,
 * `{ "value": "1-1/2 in", "source": "..." }`; bare numbers are in `unit`, which the document states. What is
 * written has the fields in the order in which they stand here.
 */
function standardSchema(unit: LengthUnit) {
  const length = sourced(lengthText(unit));
  const lengthOrZero = sourced(lengthText(unit, { zero: true }));
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
    members: membersSchema(unit),
    slides: z.record(words, slideSchema(unit)),
    slide: words,
    styles: z.array(styleSchema(unit)).readonly(),
    cabinetKinds: z.record(words, kindSchema(unit)),
    front: strict({ thickness: length, wood: frontWoodSchema(unit), groove: panelGrooveSchema(unit) }),
    box: strict({
      sideThickness: length,
      frontThickness: length,
      depth: length,
      bottom: strict({ thickness: length, raised: lengthOrZero }),
    }),
    species: z.record(words, speciesSchema),
    fastening: fasteningSchema(unit),
    pulls: z.record(words, pullSchema(unit)),
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

/** The schema of a document, by the unit that the document states. */
export const STANDARD_SCHEMAS = { in: standardSchema('in'), mm: standardSchema('mm') } as const;
