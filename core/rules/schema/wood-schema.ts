import { z } from 'zod';
import type { LengthUnit } from '../../order/types.ts';
import { lengthText, sourced, strict, words } from '../standard-fields.ts';
import { numberText, percentText, temperatureText } from './quantity-fields.ts';

/** Balsa has 0.16 and lignum vitae 1.2; common knowledge of the trade, no source. */
const SPECIFIC_GRAVITY = [0.05, 1.5] as const;

/** Per percent of moisture content. The handbook's largest is 0.00431, of beech. */
const MOVEMENT = [0.00001, 0.02] as const;

/** The document of a species: what the handbook tables of it. */
export const speciesSchema = strict({
  specificGravity: sourced(numberText(...SPECIFIC_GRAVITY)),
  softwood: z.boolean(),
  radial: sourced(numberText(...MOVEMENT)),
  tangential: sourced(numberText(...MOVEMENT)),
});

/** The document of what fronts are made of, and of the air that they are in. */
export function frontWoodSchema(unit: LengthUnit) {
  const air = strict({ humidity: sourced(percentText), temperature: sourced(temperatureText(unit)) });
  return strict({
    species: sourced(words),
    slab: sourced(z.enum(['solid', 'panel'])),
    grain: sourced(z.enum(['horizontal', 'vertical'])),
    sawn: sourced(z.enum(['flatsawn', 'quartersawn'])),
    dry: air,
    damp: air,
    shop: air,
  });
}

/** The document of the groove that holds the panel of a five-piece front. */
export function panelGrooveSchema(unit: LengthUnit) {
  const length = sourced(lengthText(unit));
  return strict({ depth: length, behind: length, width: length });
}
